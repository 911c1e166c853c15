/** A button of the top bar that unfolds a sheet of what does not stand in the bar. */
import { type Signal, useSignal } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Icon, type IconName } from '../panels/icons.tsx';

const SHEET = 'bar-menu';
export const MENU_BUTTON = 'bar-menu-button';

/** Folds the sheet when the person turns to something else, or says so with Escape. */
function useFolding(root: { readonly current: HTMLElement | null }, isOpen: Signal<boolean>): void {
  useEffect(() => {
    const onElsewhere = (event: Event): void => {
      if (!root.current?.contains(event.target as Node)) isOpen.value = false;
    };
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || !isOpen.value) return;
      isOpen.value = false;
      document.getElementById(MENU_BUTTON)?.focus();
    };
    document.addEventListener('pointerdown', onElsewhere);
    document.addEventListener('focusin', onElsewhere);
    document.addEventListener('keydown', onKey);
    return () => {
      document.removeEventListener('pointerdown', onElsewhere);
      document.removeEventListener('focusin', onElsewhere);
      document.removeEventListener('keydown', onKey);
    };
  }, [root, isOpen]);
}

interface MenuProps {
  readonly label: string;
  readonly icon: IconName;
  /** Given what folds the sheet: the keyboard is back at the button before the choice is carried out. */
  readonly children: (fold: () => void) => ComponentChildren;
}

export function BarMenu({ label, icon, children }: MenuProps): JSX.Element {
  const isOpen = useSignal(false);
  const root = useRef<HTMLDivElement>(null);
  useFolding(root, isOpen);
  const fold = (): void => {
    isOpen.value = false;
    document.getElementById(MENU_BUTTON)?.focus();
  };
  return (
    <div class="bar-menu" ref={root}>
      <button
        type="button"
        class="button"
        id={MENU_BUTTON}
        aria-expanded={isOpen.value}
        aria-controls={isOpen.value ? SHEET : undefined}
        onClick={() => {
          isOpen.value = !isOpen.value;
        }}
      >
        {label}
        <Icon name={icon} />
      </button>
      {isOpen.value && (
        <div class="bar-menu-sheet" id={SHEET}>
          {children(fold)}
        </div>
      )}
    </div>
  );
}
