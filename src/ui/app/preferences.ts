/** How this person likes the bench: unit family, colours, what the force chart shows. Kept in localStorage, apart from the work. */
import { effect, signal } from '@preact/signals';

export type Family = 'metric' | 'imperial';
export type Theme = 'system' | 'light' | 'dark';
/** Whether the force of the gas counts in the force on show. */
export type GasForce = 'shown' | 'subtracted';
export type BandChoice = 'hidden' | 'shown';

/** Whether the force chart shows what was measured. */
export type MeasuredChoice = 'shown' | 'hidden';

const THEMES: readonly Theme[] = ['system', 'light', 'dark'];
export const GAS_FORCES: readonly GasForce[] = ['shown', 'subtracted'];
export const BAND_CHOICES: readonly BandChoice[] = ['hidden', 'shown'];
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
export const theme = signal<Theme>(oneOf(THEMES, readStored('shimwright.theme'), 'system'));
export const gasForce = signal<GasForce>(oneOf(GAS_FORCES, readStored('shimwright.gas-force'), 'shown'));
export const bands = signal<BandChoice>(oneOf(BAND_CHOICES, readStored('shimwright.bands'), 'hidden'));
export const measuredPoints = signal<MeasuredChoice>(
  oneOf(MEASURED_CHOICES, readStored('shimwright.measured-points'), 'shown'),
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

export const isDark = (): boolean => (theme.value === 'system' ? systemDark.value : theme.value === 'dark');

export const nextTheme = (): void => {
  theme.value = isDark() ? 'light' : 'dark';
};

export function keepPreferences(): void {
  effect(() => store('shimwright.family', family.value));
  effect(() => store('shimwright.gas-force', gasForce.value));
  effect(() => store('shimwright.bands', bands.value));
  effect(() => store('shimwright.measured-points', measuredPoints.value));
  effect(() => store('shimwright.lessons-done', lessonsDone.value.join(' ')));
  effect(() => {
    store('shimwright.theme', theme.value);
    document.documentElement.dataset.theme = isDark() ? 'dark' : 'light';
  });
}
