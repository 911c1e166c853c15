/** The bench: builds at the side, section and shims in the middle, charts and numbers beside them. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { openFile } from './app/files.ts';
import { route } from './app/route.ts';
import { isOpen } from './app/store.ts';
import { ChartView } from './charts/chart-view.tsx';
import { Readout } from './charts/readout.tsx';
import { CompareView } from './compare/compare-view.tsx';
import { LessonsPanel } from './lessons/lessons-panel.tsx';
import { AdjusterList } from './panels/adjuster-list.tsx';
import { BuildList } from './panels/build-list.tsx';
import { Cautions } from './panels/cautions.tsx';
import { DamperForm } from './panels/damper/damper-form.tsx';
import { NoticeList } from './panels/notice-list.tsx';
import { ShimTable } from './panels/shim-table.tsx';
import { TopBar } from './panels/top-bar.tsx';
import { Bars } from './projects/bars.tsx';
import { ProofGate } from './proof/proof-gate.tsx';
import { SectionView } from './section/section-view.tsx';
import { text } from './text/en.ts';

const holdsFiles = (event: DragEvent): boolean => [...(event.dataTransfer?.types ?? [])].includes('Files');

/** A file may be dropped anywhere on the page. */
function DropVeil(): JSX.Element | null {
  const over = useSignal(false);
  useEffect(() => {
    const onDrag = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      over.value = event.type === 'dragover';
    };
    const onLeave = (event: DragEvent): void => {
      if (event.relatedTarget === null) over.value = false;
    };
    const onDrop = (event: DragEvent): void => {
      onDrag(event);
      const file = event.dataTransfer?.files[0];
      if (file) void openFile(file);
    };
    document.addEventListener('dragover', onDrag);
    document.addEventListener('dragleave', onLeave);
    document.addEventListener('drop', onDrop);
    return () => {
      document.removeEventListener('dragover', onDrag);
      document.removeEventListener('dragleave', onLeave);
      document.removeEventListener('drop', onDrop);
    };
  }, [over]);
  return over.value ? <div class="drop-veil">{text.notices.dropHere}</div> : null;
}

function BenchPage(): JSX.Element {
  return (
    <>
      <a class="skip" href="#stack">
        {text.skipToStack}
      </a>
      <TopBar />
      <Bars />
      <main class="bench">
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

export function Bench(): JSX.Element {
  if (!isOpen.value) return <p class="opening">{text.loading}</p>;
  return (
    <>
      {route.value === 'proof' ? <ProofGate /> : <BenchPage />}
      <NoticeList />
      <DropVeil />
    </>
  );
}
