/** Why there is no hysteresis at a speed, in the person's units. */
import type { CycleReading } from '../app/cycle-solve.ts';
import { hysteresisSpeed_m_s } from '../app/preferences.ts';
import { show, showField } from '../app/quantities.ts';
import { text } from '../text/en.ts';

const WAYS = ['compression', 'rebound'] as const;
const words = text.cycle;

/** As it was typed, or half of what the loop reaches as a reading. */
export const hysteresisSpeedOf = (reading: CycleReading | undefined): string =>
  hysteresisSpeed_m_s.value === undefined
    ? show('speed', reading?.hysteresis.speed_m_s ?? 0)
    : showField('speed', hysteresisSpeed_m_s.value);

/** Of a trace that goes one way only there is no speed that both ways reach, and nothing was asked for. */
export function hysteresisGaps(reading: CycleReading, read: CycleReading['hysteresis']): string[] {
  if (read.speed_m_s === 0) return [];
  const at = hysteresisSpeedOf(reading);
  return WAYS.filter((way) => !read[way]).map((way) => {
    const peak_m_s = Math.max(0, reading.peaks[way].speed_m_s * (way === 'compression' ? 1 : -1));
    return read.speed_m_s > peak_m_s
      ? words.noHysteresis.beyond(at, text.chart[way], show('speed', peak_m_s))
      : words.noHysteresis.often(at, text.chart[way]);
  });
}
