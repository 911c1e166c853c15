/** Pages, name of the project, what is kept and solved, undo, and the rest as far as the screen has room; else in one menu. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { barRoom } from '../app/bar-room.ts';
import { type Family, family, hasForcedColours, isDark, nextTheme } from '../app/preferences.ts';
import { redoEdit, redoLabel, undoEdit, undoLabel } from '../app/store.ts';
import { Choice } from '../panels/choice.tsx';
import { IconButton, Mark } from '../panels/icons.tsx';
import { UnitsButton, UnitsView } from '../panels/units-view.tsx';
import { text } from '../text/en.ts';
import { pageWords } from '../text/pages.ts';
import { BarMenu } from './bar-menu.tsx';
import { currentPage } from './current-page.ts';
import { LessonsButton } from './lessons-button.tsx';
import { PageNav } from './page-nav.tsx';
import { FilePicker, ProjectActs } from './project-acts.tsx';
import { ProjectName } from './project-name.tsx';
import { Status } from './status.tsx';

const FAMILIES: readonly Family[] = ['metric', 'imperial'];

function UndoButtons(): JSX.Element {
  return (
    <div class="group">
      <IconButton
        icon="undo"
        label={text.bar.undo(undoLabel.value)}
        disabled={undoLabel.value === undefined}
        onClick={undoEdit}
      />
      <IconButton
        icon="redo"
        label={text.bar.redo(redoLabel.value)}
        disabled={redoLabel.value === undefined}
        onClick={redoEdit}
      />
    </div>
  );
}

/** How the person likes to see things: units and colours. */
function Likings({ before }: { before?: () => void }): JSX.Element {
  return (
    <div class="group likings">
      <Choice
        label={text.bar.units}
        options={FAMILIES}
        chosen={family.value}
        name={(each) => text.bar.family[each]}
        title={(each) => text.bar.familyLong[each]}
        onChoose={(each) => {
          family.value = each;
        }}
      />
      <UnitsButton before={before} />
      {!hasForcedColours() && (
        <IconButton
          icon={isDark() ? 'dark' : 'light'}
          label={text.bar.themeNow(isDark() ? text.bar.theme.dark : text.bar.theme.light)}
          onClick={nextTheme}
        />
      )}
    </div>
  );
}

/** On a wide screen the acts on the project alone; on others everything that the bar leaves out. */
function Menu(): JSX.Element | null {
  const picker = useRef<HTMLInputElement>(null);
  const { ofProject, id } = currentPage.value;
  const room = barRoom.value;
  if (room === 'wide' && !ofProject) return null;
  return (
    <>
      <FilePicker picker={picker} />
      <BarMenu
        label={room === 'wide' ? pageWords.projectMenu : pageWords.menu}
        icon={room === 'wide' ? 'fold' : 'menu'}
      >
        {(fold) => (
          <>
            {room === 'narrow' && <PageNav onFollow={fold} />}
            {ofProject && <ProjectActs picker={picker} fold={fold} />}
            {room !== 'wide' && id === 'bench' && <LessonsButton before={fold} />}
            {room !== 'wide' && <Likings before={fold} />}
          </>
        )}
      </BarMenu>
    </>
  );
}

export function TopBar(): JSX.Element {
  const { ofProject, id } = currentPage.value;
  const isWide = barRoom.value === 'wide';
  return (
    <header class={`bar ${barRoom.value}`}>
      <span class="mark">
        <Mark />
        <span>{text.appName}</span>
      </span>
      {barRoom.value !== 'narrow' && <PageNav />}
      {ofProject ? <ProjectName /> : <span class="project" />}
      {ofProject && <Status />}
      {ofProject && <UndoButtons />}
      <Menu />
      {isWide && id === 'bench' && <LessonsButton />}
      {isWide && <Likings />}
      <UnitsView />
    </header>
  );
}
