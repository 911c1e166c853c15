/** A box to tick. */
import type { JSX } from 'preact';

interface TickProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onToggle: () => void;
}

export const Tick = ({ label, checked, onToggle }: TickProps): JSX.Element => (
  <label class="tick">
    <input type="checkbox" checked={checked} onChange={onToggle} />
    <span>{label}</span>
  </label>
);
