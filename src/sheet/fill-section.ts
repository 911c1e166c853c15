/** What is tightened, filled, charged and set: as the document has it, or a line to write on. Nothing is ever guessed. */
import { adjustersOf } from '../model/adjusters.ts';
import type { Assembly, Build, Fluid, Gas, Layout } from '../model/project.ts';
import type { Family } from '../units/format.ts';
import type { SheetInput } from './input.ts';
import { el, name, type SheetNode } from './node.ts';
import { type Fact, facts, section } from './parts.ts';
import { both } from './quantities.ts';
import { sheetWords } from './text/en.ts';

const words = sheetWords.fill;

const isWritten = (text: string | undefined): text is string => text !== undefined && text.trim() !== '';

const written = (label: string, text: string | undefined, hint?: string): Fact => ({
  ...{ label, ...(hint !== undefined && { hint }) },
  ...(isWritten(text) && { value: name(text) }),
});

function torque(label: string, torque_N_m: number | undefined, family: Family): Fact {
  return { label, ...(torque_N_m !== undefined && { value: both('torque', torque_N_m, family) }) };
}

function clampFacts(assembly: Assembly, hasBase: boolean, family: Family): Fact[] {
  return [
    torque(words.pistonTorque, assembly.pistonTorque_N_m, family),
    ...(hasBase ? [torque(words.baseTorque, assembly.baseTorque_N_m, family)] : []),
    written(words.torqueSource, assembly.torqueSource, words.manual),
    written(words.threadLocker, assembly.threadLocker),
  ];
}

function oilFacts(fluid: Fluid, { airGap, oilFill }: Gas, family: Family): Fact[] {
  const volume = oilFill && both('volume', oilFill.oilVolume_mL, family);
  return [
    written(words.oil, fluid.name),
    { label: words.temperature, value: both('temperature', fluid.temperature_degC, family) },
    { label: words.volume, ...(volume !== undefined && { value: volume }) },
    ...(airGap ? [{ label: words.level, value: both('length', airGap.level_mm, family) }] : []),
  ];
}

function gasFacts({ gaugePressure_bar, volume_mL }: Gas, layout: Layout, family: Family): Fact[] {
  const pressure = both('gasPressure', gaugePressure_bar, family);
  // A fork leg has air, at or near that of the day: nothing is charged there.
  if (layout === 'cartridge') return [{ label: words.airPressure, value: pressure }];
  return [
    { label: words.gas, value: el('span', {}, pressure, el('div', { class: 'hint' }, words.gasSafe)) },
    ...(volume_mL === undefined ? [] : [{ label: words.gasVolume, value: both('volume', volume_mL, family) }]),
  ];
}

function clickFacts(build: Build): Fact[] {
  const adjusters = adjustersOf(build);
  if (adjusters.length === 0) return [{ label: words.noAdjuster, value: '–' }];
  return adjusters.map(({ id, clicks, clickCount }) => ({
    label: words.clicks(sheetWords.adjusters[id]),
    value: words.of(clicks, clickCount),
  }));
}

export function fillSection({ project, build, family }: SheetInput): SheetNode {
  const { fluid, gas, damper } = project;
  const assembly = build.assembly ?? {};
  const hasBase = build.valves.baseCompression !== undefined;
  const notes = isWritten(assembly.notes) ? [{ label: words.notes, value: name(assembly.notes) }] : [];
  return section(
    'fill',
    words.title,
    '',
    el(
      'div',
      { class: 'pair' },
      facts([...clampFacts(assembly, hasBase, family), ...clickFacts(build)]),
      facts([...oilFacts(fluid, gas, family), ...gasFacts(gas, damper.layout, family)]),
    ),
    ...(notes.length === 0 ? [] : [facts(notes)]),
  );
}
