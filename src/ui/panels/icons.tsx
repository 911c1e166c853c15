/** Line icons of the bench, drawn for it; the words stand beside them or in their labels. */

import type { JSX } from 'preact';
import type { BuildMark } from '../app/palette.ts';

const PATHS = {
  undo: 'M6 4 3 7l3 3 M3 7h6.5a3.5 3.5 0 0 1 0 7H7',
  redo: 'M10 4l3 3-3 3 M13 7H6.5a3.5 3.5 0 0 0 0 7H9',
  duplicate: 'M6 6h7v7H6z M10 6V3H3v7h3',
  remove: 'M4 4l8 8 M12 4l-8 8',
  up: 'M8 13V3 M4 7l4-4 4 4',
  down: 'M8 3v10 M4 9l4 4 4-4',
  grip: 'M3 6h10 M3 10h10',
  more: 'M3.5 8h.01 M8 8h.01 M12.5 8h.01',
  menu: 'M2.500 4.500h11 M2.500 8h11 M2.500 11.500h11',
  fold: 'M4 6.500 8 10.500 12 6.500',
  sliders: 'M2.500 5h6 M11.500 5h2 M10 3.300v3.400 M2.500 11h2 M7.500 11h6 M6 9.300v3.400',
  check: 'M3 8.5 6.500 12 13 4.500',
  swap: 'M3 5.500h9 M9.500 3l2.500 2.500-2.500 2.500 M13 10.500H4 M6.500 8l-2.500 2.500 2.500 2.500',
  rule: 'M2 6h12v5H2z M4.500 6v2 M7 6v3 M9.500 6v2 M12 6v3',
  plus: 'M8 3v10 M3 8h10',
  minus: 'M3 8h10',
  enlarge: 'M9.500 3H13v3.500 M13 3 9 7 M6.500 13H3V9.500 M3 13l4-4',
  eye: 'M2 8s2.3-4 6-4 6 4 6 4-2.3 4-6 4-6-4-6-4z M8 6.6a1.4 1.4 0 1 0 0 2.8 1.4 1.4 0 0 0 0-2.8',
  eyeOff: 'M2 8s2.3-4 6-4 6 4 6 4-2.3 4-6 4-6-4-6-4z M3 13 13 3',
  light:
    'M8 5.2a2.8 2.8 0 1 0 0 5.6 2.8 2.8 0 0 0 0-5.6 M8 1.5v1.3 M8 13.2v1.3 M1.5 8h1.3 M13.2 8h1.3 M3.4 3.4l.9.9 M11.7 11.7l.9.9 M3.4 12.6l.9-.9 M11.7 4.3l.9-.9',
  dark: 'M12.5 10A5.2 5.2 0 0 1 6 3.5 5.2 5.2 0 1 0 12.5 10z',
} as const;

export type IconName = keyof typeof PATHS;

export function Icon({ name }: { name: IconName }): JSX.Element {
  return (
    <svg viewBox="0 0 16 16" aria-hidden="true">
      <path d={PATHS[name]} />
    </svg>
  );
}

interface IconButtonProps {
  readonly icon: IconName;
  readonly label: string;
  readonly onClick: () => void;
  readonly disabled?: boolean;
  readonly class?: string;
  /** Of what the button discloses. */
  readonly expanded?: boolean;
}

export function IconButton({ icon, label, onClick, disabled, class: extra, expanded }: IconButtonProps): JSX.Element {
  return (
    <button
      type="button"
      class={`icon ${extra ?? ''}`}
      title={label}
      aria-label={label}
      aria-expanded={expanded}
      disabled={disabled}
      onClick={onClick}
    >
      <Icon name={icon} />
    </button>
  );
}

/** Four thin discs on a post, the upper ones lifting: the mark of the project. */
export function Mark(): JSX.Element {
  return (
    <svg viewBox="0 0 28 28" aria-hidden="true">
      <path d="M14 3v22" stroke-width="1.2" stroke-dasharray="6 1.6 1.4 1.6" />
      <path d="M3 22h22" stroke-width="3" />
      <path d="M2 14.2C6 16 9 18 11 18.3h6c2-.3 5-2.300 9-4.100" stroke-width="1.7" />
      <path d="M4.500 11.600C8 13.500 9.800 14.900 11.500 15h5c1.700-.1 3.500-1.500 7-3.400" stroke-width="1.7" />
      <path d="M8.500 10.700c1.500.9 2.500 1.300 3.500 1.300h4c1 0 2-.4 3.500-1.300" stroke-width="1.7" />
    </svg>
  );
}

/** In the middle of a sample. */
const MARK_PATHS: Readonly<Record<BuildMark, string>> = {
  'circle-open': 'M13.500 5a3.500 3.500 0 1 0 7 0a3.500 3.500 0 1 0-7 0z',
  'square-open': 'M13.800 1.800h6.400v6.400h-6.400z',
  'diamond-open': 'M17 .8 21.200 5 17 9.200 12.800 5z',
  'triangle-up-open': 'M17 1l4.200 7.500h-8.400z',
  'triangle-down-open': 'M17 9l4.200-7.500h-8.400z',
  'cross-open': 'M15.500 1h3v2.500H21v3h-2.500V9h-3V6.500H13v-3h2.500z',
  'pentagon-open': 'M17 .8l4.200 3-1.600 4.900h-5.200L12.800 3.800z',
};

interface LineSampleProps {
  readonly colour: string;
  readonly dash: string;
  /** Where the chart has marks beside the line. */
  readonly mark?: BuildMark;
}

/** The line of a build as it stands on the charts. */
export function LineSample({ colour, dash, mark }: LineSampleProps): JSX.Element {
  return (
    <svg class="line-sample" viewBox="0 0 34 10" width="34" height="10" aria-hidden="true">
      <path
        d="M0 5h34"
        stroke={colour}
        stroke-width="2.5"
        stroke-dasharray={dash === 'solid' ? undefined : dash.replaceAll('px', '')}
        fill="none"
      />
      {mark && <path class="sample-mark" d={MARK_PATHS[mark]} stroke={colour} stroke-width="1.3" />}
    </svg>
  );
}
