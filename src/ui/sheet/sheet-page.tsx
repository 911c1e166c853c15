/** The build sheet of the build on show: as it prints, beside what a person writes onto it. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { buildSheet } from '../../sheet/build-sheet.ts';
import { htmlPage } from '../../sheet/html.ts';
import { sheetWords } from '../../sheet/text/en.ts';
import { tell } from '../app/notices.ts';
import { family } from '../app/preferences.ts';
import { baseline, project, selectedBuild } from '../app/store.ts';
import { exportName } from '../export/file-name.ts';
import { PageHead } from '../shell/page-head.tsx';
import { download } from '../storage/download.ts';
import { sheetPageWords as words } from '../text/sheet.ts';
import { AssemblyFields } from './assembly-fields.tsx';
import { Paper } from './paper.tsx';
import { sheetCurve, startSheetForces } from './sheet-forces.ts';
import { sheetLink, startSheetLink } from './sheet-link.ts';
import './sheet.css';

/** Undefined until its link is known, which takes a moment. */
const sheet = computed(() => {
  const link = sheetLink.value;
  if (link === undefined) return undefined;
  const [build, before] = [selectedBuild.value, baseline.value];
  return buildSheet({
    ...{ project: project.value, build, baseline: before, family: family.value },
    curves: { build: sheetCurve(build), baseline: sheetCurve(before) },
    ...(link !== 'none' && { link }),
  });
});

const isSolving = computed(() => [selectedBuild, baseline].some((each) => sheetCurve(each.value).status === 'solving'));

function saveFile(): void {
  if (!sheet.value) return;
  const { name } = selectedBuild.value;
  const file = exportName(project.value.name, `${words.file} ${name}`, 'html');
  download(file, htmlPage(sheetWords.windowTitle(name, project.value.name), sheet.value), 'text/html');
  tell(words.saved(file));
}

const Acts = (): JSX.Element => (
  <div class="group">
    <button type="button" class="button" disabled={isSolving.value} title={words.printWhy} onClick={() => print()}>
      {words.print}
    </button>
    <button type="button" class="button" disabled={isSolving.value} title={words.saveWhy} onClick={saveFile}>
      {words.save}
    </button>
  </div>
);

export function SheetPage(): JSX.Element {
  useEffect(() => startSheetForces(), []);
  useEffect(() => startSheetLink(), []);
  return (
    <main class="sheet-bench">
      <PageHead title={words.title}>
        <Acts />
      </PageHead>
      <AssemblyFields />
      <section class="paper-tray" id="build-sheet" tabIndex={-1} aria-label={words.paper}>
        {sheet.value && <Paper sheet={sheet.value} />}
      </section>
    </main>
  );
}
