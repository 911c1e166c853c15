/** Which chart is looked at. */
import { signal } from '@preact/signals';
import type { ChartName } from './chart-data.ts';

/** The tabs, by what is asked: at every speed, over time, at the speed cursor under other settings. */
export type TabName = ChartName | 'effects' | 'temperature' | 'position' | 'clicks' | 'tolerance' | 'cycle';
export type TabGroup = 'bySpeed' | 'atCursor' | 'overTime';
export const TABS = {
  bySpeed: ['force', 'paths', 'pressures', 'opening', 'shims'],
  overTime: ['cycle'],
  atCursor: ['effects', 'temperature', 'position', 'clicks', 'tolerance'],
} as const satisfies Record<TabGroup, readonly TabName[]>;
const isOverSpeed = (wanted: TabName): wanted is ChartName => TABS.bySpeed.some((each) => each === wanted);

export const tab = signal<TabName>('force');
/** The chart over speed that is shown, or was shown last. */
export const chart = signal<ChartName>('force');

export function showTab(wanted: TabName): void {
  tab.value = wanted;
  if (isOverSpeed(wanted)) chart.value = wanted;
}
