/** How this person likes the bench: unit family, colours, what the force chart shows. Kept in localStorage, apart from the work. */
import { computed, effect, signal } from '@preact/signals';
import { type DecimalSign, decimalSignOf } from '../../units/decimal-sign.ts';
import { type OwnUnits, readOwnUnits, type Units, unitIn } from '../../units/own-units.ts';
import type { Kind, UnitOf } from '../../units/unit-table.ts';

export type Family = 'metric' | 'imperial';
export type Theme = 'system' | 'light' | 'dark';
/** Whether the force of the gas counts in the force on show. */
export type GasForce = 'shown' | 'subtracted';
export type BandChoice = 'hidden' | 'shown' | 'tolerance';

/** Whether the force chart shows what was measured. */
export type MeasuredChoice = 'shown' | 'hidden';

/** Which sign stands before the decimals. */
export type NumberChoice = 'browser' | 'point' | 'comma';

export const NUMBER_CHOICES: readonly NumberChoice[] = ['browser', 'point', 'comma'];
const THEMES: readonly Theme[] = ['system', 'light', 'dark'];
export const GAS_FORCES: readonly GasForce[] = ['shown', 'subtracted'];
export const BAND_CHOICES: readonly BandChoice[] = ['hidden', 'shown', 'tolerance'];
export const MEASURED_CHOICES: readonly MeasuredChoice[] = ['hidden', 'shown'];

/** A browser may refuse storage; the bench then starts with its defaults each time. */
function readStored(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function store(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // Preferences are a comfort: without storage they last as long as the page.
  }
}

const oneOf = <T extends string>(options: readonly T[], value: string | null, otherwise: T): T =>
  options.find((option) => option === value) ?? otherwise;

export const family = signal<Family>(oneOf(['metric', 'imperial'], readStored('shimwright.family'), 'metric'));
const readOwn = (): OwnUnits => {
  try {
    return readOwnUnits(JSON.parse(readStored('shimwright.units') ?? '{}'));
  } catch {
    return {};
  }
};
/** Units picked for one kind of quantity, whatever the family. */
export const ownUnits = signal<OwnUnits>(readOwn());
export const units = computed<Units>(() => ({ family: family.value, own: ownUnits.value }));

/** Another unit for one kind; that of the family is no unit of its own. */
export function pickUnit<K extends Kind>(kind: K, symbol: UnitOf<K>): void {
  const { [kind]: _old, ...others } = ownUnits.value;
  const isFamily = symbol === unitIn({ family: family.value }, kind);
  ownUnits.value = isFamily ? others : { ...others, [kind]: symbol };
}
export const resetUnits = (): void => {
  ownUnits.value = {};
};

export const numberChoice = signal<NumberChoice>(oneOf(NUMBER_CHOICES, readStored('shimwright.numbers'), 'browser'));
const browserSign = decimalSignOf(undefined);
export const decimalSign = computed<DecimalSign>(() => {
  if (numberChoice.value === 'browser') return browserSign;
  return numberChoice.value === 'comma' ? ',' : '.';
});

const speedOrNone = (stored: string | null): number | undefined => {
  const speed_m_s = Number(stored);
  return speed_m_s > 0 && Number.isFinite(speed_m_s) ? speed_m_s : undefined;
};
/** At which the hysteresis of a cycle is read [m/s]; undefined is half of what both directions reach. */
export const hysteresisSpeed_m_s = signal(speedOrNone(readStored('shimwright.hysteresis-m-s')));

export const theme = signal<Theme>(oneOf(THEMES, readStored('shimwright.theme'), 'system'));
export const gasForce = signal<GasForce>(oneOf(GAS_FORCES, readStored('shimwright.gas-force'), 'shown'));
export const bands = signal<BandChoice>(oneOf(BAND_CHOICES, readStored('shimwright.bands'), 'hidden'));
export const measuredPoints = signal<MeasuredChoice>(
  oneOf(MEASURED_CHOICES, readStored('shimwright.measured-points'), 'shown'),
);
/** Whether the force chart shows the curve with fitted coefficients too. */
export const fittedCurves = signal<MeasuredChoice>(
  oneOf(MEASURED_CHOICES, readStored('shimwright.fitted-curves'), 'shown'),
);
/** Lessons that were answered once, by their ids. */
export const lessonsDone = signal<readonly string[]>(
  (readStored('shimwright.lessons-done') ?? '').split(' ').filter(Boolean),
);

const darkQuery = window.matchMedia('(prefers-color-scheme: dark)');
const systemDark = signal(darkQuery.matches);
darkQuery.addEventListener('change', (event) => {
  systemDark.value = event.matches;
});

/** Paper is light: what is printed from a dark bench takes the inks for a light one. */
const printQuery = window.matchMedia('print');
const printing = signal(printQuery.matches);
printQuery.addEventListener('change', (event) => {
  printing.value = event.matches;
});

export const isPrinting = (): boolean => printing.value;

/** A person whose system lays its own colours over every page: light or dark is then told by those, not chosen here. */
const forcedQuery = window.matchMedia('(forced-colors: active)');
const forced = signal(forcedQuery.matches);
forcedQuery.addEventListener('change', (event) => {
  forced.value = event.matches;
});

export const hasForcedColours = (): boolean => forced.value && !printing.value;

export const isDark = (): boolean => {
  if (printing.value) return false;
  if (forced.value) return systemDark.value;
  return theme.value === 'system' ? systemDark.value : theme.value === 'dark';
};

export const nextTheme = (): void => {
  theme.value = isDark() ? 'light' : 'dark';
};

export function keepPreferences(): void {
  effect(() => store('shimwright.family', family.value));
  effect(() => store('shimwright.units', JSON.stringify(ownUnits.value)));
  effect(() => store('shimwright.numbers', numberChoice.value));
  effect(() => store('shimwright.gas-force', gasForce.value));
  effect(() => store('shimwright.bands', bands.value));
  effect(() => store('shimwright.measured-points', measuredPoints.value));
  effect(() => store('shimwright.fitted-curves', fittedCurves.value));
  effect(() => store('shimwright.hysteresis-m-s', String(hysteresisSpeed_m_s.value ?? '')));
  effect(() => store('shimwright.lessons-done', lessonsDone.value.join(' ')));
  effect(() => {
    store('shimwright.theme', theme.value);
    document.documentElement.dataset.theme = hasForcedColours() ? 'forced' : isDark() ? 'dark' : 'light';
  });
}
