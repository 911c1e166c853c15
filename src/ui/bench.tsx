/** The bench: builds at the side, section and shims in the middle, charts and numbers beside them. */
import type { JSX } from 'preact';
import { ChartView } from './charts/chart-view.tsx';
import { Readout } from './charts/readout.tsx';
import { CompareView } from './compare/compare-view.tsx';
import { LessonsPanel } from './lessons/lessons-panel.tsx';
import { MeasuredPanel } from './measured/measured-panel.tsx';
import { AdjusterList } from './panels/adjuster-list.tsx';
import { BuildList } from './panels/build-list.tsx';
import { Cautions } from './panels/cautions.tsx';
import { DamperForm } from './panels/damper/damper-form.tsx';
import { ShimTable } from './panels/shim-table.tsx';
import { SectionView } from './section/section-view.tsx';
import { PageHead } from './shell/page-head.tsx';
import { pageWords } from './text/pages.ts';

export function BenchPage(): JSX.Element {
  return (
    <>
      <main class="bench">
        <PageHead title={pageWords.pages.bench.name} quiet />
        <LessonsPanel />
        <div class="side">
          <BuildList />
          <AdjusterList />
          <DamperForm />
          <Cautions />
        </div>
        <div class="middle">
          <SectionView />
          <ShimTable />
          <MeasuredPanel />
        </div>
        <div class="right">
          <ChartView />
          <Readout />
        </div>
      </main>
      <CompareView />
    </>
  );
}
