/** The build sheet: everything for putting one build together, in the order in which it is needed. */
import { curveSection } from './curve-section.ts';
import { fillSection } from './fill-section.ts';
import type { SheetInput, SheetLink } from './input.ts';
import { el, type SheetNode } from './node.ts';
import { checklist, facts, hint, named, section } from './parts.ts';
import { changesSection, pickingSection } from './parts-sections.ts';
import { stackSections } from './stack-sections.ts';
import { sheetWords as words } from './text/en.ts';
import { stepWords as steps } from './text/steps.ts';

function head({ project, build }: SheetInput): SheetNode {
  const invented = project.invented ? [el('span', { class: 'invented' }, words.invented)] : [];
  return el(
    'header',
    { class: 'sheet-head' },
    el('div', {}, el('h1', { class: 'sheet-title' }, words.title), ...invented),
    facts([
      { label: words.head.machine, value: named(project.name, words.unnamed) },
      { label: words.head.date },
      { label: words.head.damper, value: named(project.damper.name, words.unnamed) },
      { label: words.head.by },
      { label: words.head.build, value: named(build.name, words.unnamed) },
    ]),
  );
}

function stepSections({ project: { damper } }: SheetInput): SheetNode[] {
  const { assemble, check, ride } = steps;
  const assembly = [...assemble.steps, assemble.gas[damper.layout]];
  return [
    el(
      'div',
      { class: 'pair' },
      section('assemble', assemble.title, words.common, checklist(assembly)),
      section('check', check.title, words.common, checklist(check.steps)),
    ),
    el(
      'div',
      { class: 'pair' },
      section('ride', ride.title, words.common, checklist(ride.steps)),
      cautions(damper.layout),
    ),
  ];
}

function cautions(layout: SheetInput['project']['damper']['layout']): SheetNode {
  const { title, gas, items } = steps.cautions;
  const told = layout === 'cartridge' ? items : [gas, ...items];
  return el(
    'section',
    { class: 'cautions', 'aria-labelledby': 'sheet-cautions' },
    el('h2', { id: 'sheet-cautions' }, title),
    el('ul', {}, ...told.map((each) => el('li', {}, each))),
  );
}

/** A longer address fills a quarter of a page that nobody types in [characters]. */
export const LONGEST_PRINTED = 2400;

function linkParts(link: SheetLink | undefined): SheetNode[] {
  if (!link) return [el('p', {}, words.link.none)];
  const { address, isWhole } = link;
  const isLong = address.length > LONGEST_PRINTED;
  const text = isWhole ? el('a', { href: address }, address) : el('code', {}, address);
  return [
    ...(isWhole
      ? [el('p', { class: 'no-print' }, el('a', { class: 'follow', href: address }, words.link.follow))]
      : []),
    hint(isWhole ? words.link.whole : words.link.fragment),
    ...(isLong ? [hint(words.link.long)] : []),
    el('p', isLong ? { class: 'no-print' } : {}, text),
  ];
}

function signatures(): SheetNode {
  const { title, built, checked, date } = words.signatures;
  const line = (who: string): SheetNode => facts([{ label: who }, { label: date }]);
  return section('signatures', title, '', el('div', { class: 'pair' }, line(built), line(checked)));
}

/** The whole sheet. The curves may still be on their way: it then says so in their place. */
export function buildSheet(input: SheetInput): SheetNode {
  return el(
    'article',
    { class: 'build-sheet', 'aria-label': words.title },
    head(input),
    ...stackSections(input),
    el('div', { class: 'pair' }, pickingSection(input), changesSection(input)),
    fillSection(input),
    ...stepSections(input),
    curveSection(input),
    signatures(),
    section('links', words.link.title, '', ...linkParts(input.link)),
  );
}
