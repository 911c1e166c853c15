/** A button that unfolds a small sheet over what stands below it. */
import { type Signal, useSignal } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Icon, type IconName } from './icons.tsx';

export const foldOutButton = (name: string): string => `${name}-button`;

/** Folds the sheet when the person turns to something else, or says so with Escape. */
function useFolding(root: { readonly current: HTMLElement | null }, isOpen: Signal<boolean>, name: string): void {
  useEffect(() => {
    const onElsewhere = (event: Event): void => {
      if (!root.current?.contains(event.target as Node)) isOpen.value = false;
    };
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || !isOpen.value) return;
      isOpen.value = false;
      document.getElementById(foldOutButton(name))?.focus();
    };
    document.addEventListener('pointerdown', onElsewhere);
    document.addEventListener('focusin', onElsewhere);
    document.addEventListener('keydown', onKey);
    return () => {
      document.removeEventListener('pointerdown', onElsewhere);
      document.removeEventListener('focusin', onElsewhere);
      document.removeEventListener('keydown', onKey);
    };
  }, [root, isOpen, name]);
}

interface FoldOutProps {
  /** Id of the sheet, and class of the whole. */
  readonly name: string;
  readonly label: string;
  readonly icon: IconName;
  /** Shows the icon alone; the label is then its name. */
  readonly iconOnly?: boolean;
  /** Given what folds the sheet: the keyboard is back at the button before the choice is carried out. */
  readonly children: (fold: () => void) => ComponentChildren;
}

export function FoldOut({ name, label, icon, iconOnly = false, children }: FoldOutProps): JSX.Element {
  const isOpen = useSignal(false);
  const root = useRef<HTMLDivElement>(null);
  useFolding(root, isOpen, name);
  const fold = (): void => {
    isOpen.value = false;
    document.getElementById(foldOutButton(name))?.focus();
  };
  return (
    <div class={`fold-out ${name}`} ref={root}>
      <button
        type="button"
        class="button"
        title={iconOnly ? label : undefined}
        aria-label={iconOnly ? label : undefined}
        id={foldOutButton(name)}
        aria-expanded={isOpen.value}
        aria-controls={isOpen.value ? name : undefined}
        onClick={() => {
          isOpen.value = !isOpen.value;
        }}
      >
        {!iconOnly && label}
        <Icon name={icon} />
      </button>
      {isOpen.value && (
        <div class="fold-out-sheet" id={name}>
          {children(fold)}
        </div>
      )}
    </div>
  );
}
