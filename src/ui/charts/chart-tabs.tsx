/** What there is to look at, by the question that it answers. */
import type { JSX } from 'preact';
import { Choice } from '../panels/choice.tsx';
import { text } from '../text/en.ts';
import { showTab, TABS, type TabGroup, type TabName, tab } from './tabs.ts';

const GROUPS = Object.keys(TABS) as readonly TabGroup[];

export function ChartTabs(): JSX.Element {
  return (
    <div class="chart-tabs">
      {GROUPS.map((group) => (
        <div key={group} class="tab-group">
          <span aria-hidden="true">{text.chart.tabGroups[group]}</span>
          <Choice<TabName>
            label={text.chart.tabGroups[group]}
            options={TABS[group]}
            chosen={tab.value}
            name={(each) => text.chart.tabs[each]}
            onChoose={showTab}
          />
        </div>
      ))}
    </div>
  );
}
