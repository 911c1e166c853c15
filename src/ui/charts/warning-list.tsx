/** What goes wrong in a chart, a line each, told to a screen reader as it comes; nothing where all is well. */
import type { JSX } from 'preact';

export function WarningList({ lines }: { lines: readonly string[] }): JSX.Element | null {
  if (lines.length === 0) return null;
  return (
    <div class="warnings" role="status">
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
