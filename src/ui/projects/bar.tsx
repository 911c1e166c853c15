/** One bar: what it says, and what can be done about it. */
import type { ComponentChildren, JSX } from 'preact';

interface BarProps {
  readonly kind: string;
  readonly tone?: 'problem';
  readonly message: string;
  readonly children: ComponentChildren;
}

export function Bar({ kind, tone, message, children }: BarProps): JSX.Element {
  return (
    <div class={`keeping-bar ${tone ?? ''}`} data-bar={kind} role={tone === 'problem' ? 'alert' : 'status'}>
      <p>{message}</p>
      <div class="acts">{children}</div>
    </div>
  );
}

interface ActProps {
  readonly label: string;
  readonly onClick: () => void;
  /** The whole name, where the label is short because of what stands beside it. */
  readonly name?: string;
  readonly title?: string;
  readonly disabled?: boolean;
}

export const Act = ({ label, name, ...button }: ActProps): JSX.Element => (
  <button type="button" class="button" aria-label={name} {...button}>
    {label}
  </button>
);
