/** A shaft speed of the view, such as the speed cursor; it is no part of the document. */
import type { JSX } from 'preact';
import { showField } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { ViewField } from './view-field.tsx';

interface SpeedFieldProps {
  readonly label: string;
  readonly value_m_s: number;
  readonly upTo_m_s: number;
  readonly onSpeed: (speed_m_s: number) => void;
}

/** Cursor positions are read to the millimetre a second. */
const rounded = (speed: number): number => Number(speed.toFixed(3));

export function SpeedField({ label, value_m_s, upTo_m_s, onSpeed }: SpeedFieldProps): JSX.Element {
  return (
    <ViewField
      label={label}
      kind="speed"
      value={rounded(value_m_s)}
      holds={(speed) => speed > 0 && speed <= upTo_m_s}
      wanted={text.chart.speedWanted(showField('speed', upTo_m_s))}
      onValue={onSpeed}
    />
  );
}
