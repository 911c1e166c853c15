/** `shimwright sheet`: the build sheet of one build as an HTML file that needs nothing else. */
import { deflateRawSync } from 'node:zlib';
import { decodeProject } from '../../model/codec.ts';
import { FORM, KEY, LONGEST_MADE, projectOfBuild } from '../../model/link-form.ts';
import type { Build, Project } from '../../model/project.ts';
import { buildSheet } from '../../sheet/build-sheet.ts';
import { htmlPage } from '../../sheet/html.ts';
import { SHEET_SPEEDS_M_S, type SheetCurve, type SheetLink } from '../../sheet/input.ts';
import { sheetWords } from '../../sheet/text/en.ts';
import { forceCurveForBuild, type TheoryChoice, theoriesOf } from '../../solver/index.ts';
import type { Family } from '../../units/format.ts';
import { type Command, EXIT, type Outcome, type Request, UsageError, type Values } from '../command.ts';
import { readDocument } from '../input.ts';
import { findBuild } from '../occasions.ts';
import { BUILD_CHOICE, THEORY } from '../shared-options.ts';
import { theoryOf } from '../theories.ts';

const UNITS = 'units';
const BENCH = 'bench';
const FAMILIES: readonly Family[] = ['metric', 'imperial'];

function curveOf(project: Project, { id }: Build, theory: TheoryChoice): Extract<SheetCurve, { status: 'solved' }> {
  const curve = forceCurveForBuild(project, id, { speeds_m_s: SHEET_SPEEDS_M_S, theory });
  const { points } = curve;
  const reasons = points.flatMap((point) => (point.status === 'converged' ? [] : [point.reason]));
  return {
    status: 'solved',
    shaftSpeed_m_s: SHEET_SPEEDS_M_S,
    force_N: points.map((point) => (point.status === 'converged' ? point.force_N : null)),
    reasons: [...new Set(reasons)],
    theories: theoriesOf(curve),
  };
}

/** @throws UsageError for what is no address of a page */
function addressOf(values: Values): string | undefined {
  const typed = values.get(BENCH);
  if (typed === undefined) return undefined;
  const address = URL.canParse(typed) ? new URL(typed) : undefined;
  if (address && /^https?:$/.test(address.protocol)) return address.href.replace(/#.*$/, '');
  throw new UsageError(`--${BENCH}: got ${JSON.stringify(typed)}; wanted an address such as http://127.0.0.1:8080/`);
}

function linkOf(project: Project, { id }: Build, bench: string | undefined): SheetLink | undefined {
  const packed = deflateRawSync(JSON.stringify(projectOfBuild(project, id))).toString('base64url');
  const fragment = KEY + FORM + packed;
  if (fragment.length > LONGEST_MADE) return undefined;
  return { address: (bench ?? '') + fragment, isWhole: bench !== undefined };
}

async function sheet({ file, values }: Request): Promise<Outcome> {
  const bench = addressOf(values);
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values);
  const baseline = findBuild(project, new Map());
  const [own, before] = [build, baseline].map((each) => curveOf(project, each, theoryOf(values)));
  const link = linkOf(project, build, bench);
  const node = buildSheet({
    ...{ project, build, baseline, curves: { build: own, baseline: before } },
    family: (values.get(UNITS) as Family | undefined) ?? 'metric',
    ...(link && { link }),
  });
  const reasons = [...new Set([...own.reasons, ...before.reasons])];
  return {
    exit: reasons.length === 0 ? EXIT.done : EXIT.failed,
    result: htmlPage(sheetWords.windowTitle(build.name, project.name), node),
    talk: reasons,
  };
}

export const sheetCommand: Command = {
  name: 'sheet',
  input: 'PROJECT',
  summary: 'the build sheet of one build: what goes on in which order, what to fill and to check, ready to print',
  example: 'project.json --build custom --html > sheet.html',
  options: [
    { name: 'html', required: true, help: 'print one HTML file that needs nothing else' },
    {
      name: UNITS,
      value: 'FAMILY',
      choices: FAMILIES,
      help: 'whose units stand first; both are printed; metric unless said otherwise',
    },
    {
      name: BENCH,
      value: 'ADDRESS',
      help: 'where your bench is, for a link back to the build; without it the sheet has what goes behind such an address',
    },
    BUILD_CHOICE,
    THEORY,
  ],
  run: sheet,
};
