/** A shaft speed of the view, such as the speed cursor; it is no part of the document. */
import type { JSX } from 'preact';
import { InputError } from '../../units/fault.ts';
import { type EditFault, faultInWords } from '../app/apply.ts';
import { readField, unitOf, writeField } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { BoxField } from './box-field.tsx';

interface SpeedFieldProps {
  readonly label: string;
  readonly value_m_s: number;
  readonly upTo_m_s: number;
  readonly onSpeed: (speed_m_s: number) => void;
}

/** Cursor positions are read to the millimetre a second. */
const rounded = (speed: number): number => Number(speed.toFixed(3));

export function SpeedField({ label, value_m_s, upTo_m_s, onSpeed }: SpeedFieldProps): JSX.Element {
  const attempt = (typed: string): EditFault | undefined => {
    try {
      const speed = readField('speed', typed);
      const limit = `${writeField('speed', upTo_m_s)} ${unitOf('speed')}`;
      if (!(speed > 0 && speed <= upTo_m_s))
        return { code: 'view.speed', message: text.fault(typed, text.chart.speedWanted(limit)) };
      onSpeed(speed);
      return undefined;
    } catch (error) {
      if (error instanceof InputError) return faultInWords(error.fault);
      throw error;
    }
  };
  return (
    <BoxField
      label={label}
      unit={unitOf('speed')}
      written={writeField('speed', rounded(value_m_s))}
      attempt={attempt}
    />
  );
}
