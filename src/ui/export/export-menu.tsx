/** A small menu of what can be taken out of a sheet: a button, and a list for pointer and keys. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { text } from '../text/en.ts';
import './export.css';

export interface ExportChoice {
  readonly id: string;
  readonly label: string;
  readonly run: () => void;
}

interface MenuProps {
  /** Of what, for those who do not see where the button stands. */
  readonly of: string;
  /** Asked for when the menu opens. */
  readonly choices: () => readonly ExportChoice[];
}

const itemsOf = (list: HTMLElement): HTMLElement[] => [...list.querySelectorAll<HTMLElement>('[role=menuitem]')];

/** Where a key leads from one item; undefined for keys that do not move. */
export function nextItem(key: string, now: number, count: number): number | undefined {
  const moves: Readonly<Record<string, number>> = {
    ArrowDown: (now + 1) % count,
    ArrowUp: (now - 1 + count) % count,
    Home: 0,
    End: count - 1,
  };
  return moves[key];
}

interface ListProps {
  readonly id: string;
  readonly of: string;
  readonly choices: readonly ExportChoice[];
  readonly onClose: (backToButton: boolean) => void;
}

function MenuList({ id, of, choices, onClose }: ListProps): JSX.Element {
  const list = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = list.current;
    if (!element) return;
    // The list hangs from the right end of its button, or from the left where the page has no room.
    if (element.getBoundingClientRect().left < 0) element.classList.add('rightwards');
    itemsOf(element)[0]?.focus();
  }, []);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') {
      event.stopPropagation();
      onClose(true);
      return;
    }
    const items = itemsOf(event.currentTarget as HTMLElement);
    const next = nextItem(event.key, items.indexOf(document.activeElement as HTMLElement), items.length);
    if (next === undefined) return;
    event.preventDefault();
    items[next].focus();
  };
  const onFocusOut = (event: FocusEvent): void => {
    if (!list.current?.contains(event.relatedTarget as Node | null)) onClose(false);
  };
  return (
    <div
      ref={list}
      id={id}
      class="export-list"
      role="menu"
      tabIndex={-1}
      aria-label={text.export.of(of)}
      onKeyDown={onKeyDown}
      onFocusOut={onFocusOut}
    >
      {choices.map(({ id: choice, label, run }) => (
        <button
          key={choice}
          type="button"
          role="menuitem"
          tabIndex={-1}
          data-export={choice}
          onClick={() => {
            onClose(true);
            run();
          }}
        >
          {label}
        </button>
      ))}
    </div>
  );
}

export function ExportMenu({ of, choices }: MenuProps): JSX.Element {
  const isOpen = useSignal(false);
  const root = useRef<HTMLSpanElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    const onDown = (event: PointerEvent): void => {
      if (!root.current?.contains(event.target as Node)) isOpen.value = false;
    };
    document.addEventListener('pointerdown', onDown);
    return () => document.removeEventListener('pointerdown', onDown);
  }, [isOpen]);
  const close = (backToButton: boolean): void => {
    isOpen.value = false;
    if (backToButton) button.current?.focus();
  };
  const listId = `export-${of.replace(/\W+/g, '-').toLowerCase()}`;
  return (
    <span class="export" ref={root}>
      <button
        ref={button}
        type="button"
        class="button"
        aria-haspopup="menu"
        aria-expanded={isOpen.value}
        aria-controls={isOpen.value ? listId : undefined}
        aria-label={text.export.of(of)}
        // Taking the focus out of the list would close it before the click, which would then open it again.
        onMouseDown={(event) => isOpen.value && event.preventDefault()}
        onClick={() => {
          if (isOpen.value) close(true);
          else isOpen.value = true;
        }}
        onKeyDown={(event) => {
          if (event.key !== 'ArrowDown') return;
          event.preventDefault();
          isOpen.value = true;
        }}
      >
        {text.export.button}
      </button>
      {isOpen.value && <MenuList id={listId} of={of} choices={choices()} onClose={close} />}
    </span>
  );
}
