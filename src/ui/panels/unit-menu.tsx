/** The unit behind a number, and the menu of units that it opens: what is picked holds for every number of the kind. */
import type { JSX, RefObject } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { unitChoices, unitIn } from '../../units/own-units.ts';
import type { Kind } from '../../units/unit-table.ts';
import { family, ownUnits, pickUnit, units } from '../app/preferences.ts';
import { unitsWords as words } from '../text/units.ts';

interface UnitMenuProps {
  readonly kind: Kind;
  /** Of the field. */
  readonly label: string;
  /** Opens the menu from the field by a key. */
  readonly button: RefObject<HTMLButtonElement | null>;
}

/** Beside its button, within the page. */
function placeMenu(menu: HTMLElement, button: HTMLElement): void {
  const [room, at] = [menu.getBoundingClientRect(), button.getBoundingClientRect()];
  const left = Math.min(at.right - room.width, window.innerWidth - room.width - 4);
  const below = at.bottom + room.height < window.innerHeight;
  menu.style.left = `${Math.max(4, left)}px`;
  menu.style.top = `${Math.max(4, below ? at.bottom + 2 : at.top - room.height - 2)}px`;
}

const itemsOf = (menu: HTMLElement): HTMLElement[] => [...menu.querySelectorAll<HTMLElement>('[role=menuitemradio]')];

function moveIn(menu: HTMLElement, event: KeyboardEvent): void {
  const items = itemsOf(menu);
  const at = items.indexOf(document.activeElement as HTMLElement);
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: at + 1,
    ArrowUp: at - 1,
    Home: 0,
    End: items.length - 1,
  };
  if (event.key === 'Tab') {
    menu.hidePopover();
    return;
  }
  event.stopPropagation();
  const to = steps[event.key];
  if (to === undefined) return;
  event.preventDefault();
  items[(to + items.length) % items.length].focus();
}

export function UnitMenu({ kind, label, button }: UnitMenuProps): JSX.Element {
  const id = useId();
  const menu = useRef<HTMLDivElement>(null);
  const now = unitIn(units.value, kind);
  const isOwn = ownUnits.value[kind] !== undefined;
  const open = (): void => {
    const [list, opener] = [menu.current, button.current];
    if (!list || !opener) return;
    list.showPopover();
    placeMenu(list, opener);
    (itemsOf(list).find((item) => item.ariaChecked === 'true') ?? itemsOf(list)[0]).focus();
  };
  const pick = (symbol: (typeof choices)[number]): void => {
    menu.current?.hidePopover();
    pickUnit(kind, symbol);
  };
  const choices = unitChoices(kind);
  return (
    <>
      <button
        ref={button}
        type="button"
        class={`unit ${isOwn ? 'own' : ''}`}
        tabIndex={-1}
        aria-haspopup="menu"
        aria-label={words.pick(label, now)}
        aria-keyshortcuts="Alt+ArrowDown"
        title={isOwn ? words.ownWhy(kind, now) : words.pick(label, now)}
        onClick={open}
      >
        {now}
      </button>
      <div
        ref={menu}
        id={id}
        popover="auto"
        role="menu"
        class="unit-menu"
        aria-label={words.menu(kind)}
        onKeyDown={(event) => menu.current && moveIn(menu.current, event)}
      >
        {choices.map((symbol) => (
          <button
            key={symbol}
            type="button"
            role="menuitemradio"
            tabIndex={-1}
            aria-checked={symbol === now}
            onClick={() => pick(symbol)}
          >
            {symbol === unitIn({ family: family.value }, kind) ? words.asFamily(symbol) : symbol}
          </button>
        ))}
      </div>
    </>
  );
}
