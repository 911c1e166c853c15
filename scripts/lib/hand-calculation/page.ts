/** The blocks of the page on the calculation by hand. */
import type { Project } from '../../../src/model/project.ts';
import { oilFromDocument } from '../../../src/solver/index.ts';
import { cartridgeStrokes, monotubeStrokes, strokeTable, summaryTable } from './comparison.ts';
import { type CartridgeByHand, cartridgeByHand, type MonotubeByHand, monotubeByHand } from './dampers.ts';
import { type Bending, rigidity } from './roark.ts';
import { printed, row, type Sheet, stepTable, stepValue } from './sheet.ts';
import { type StackToCompare, stiffnessTable } from './stiffness.ts';

/** Stack closed, stack open with little stretching, and with a lot. */
export const MONOTUBE_SPEEDS_M_S = [0.015, 0.3, 1];
export const CARTRIDGE_SPEED_M_S = 0.3;

/** By the name of its marks. */
export function handBlocks(monotube: Project, cartridge: Project): Record<string, string> {
  const M = monotubeByHand(monotube, MONOTUBE_SPEEDS_M_S);
  const C = cartridgeByHand(cartridge, CARTRIDGE_SPEED_M_S, oilOf(cartridge));
  const alone = ['value'];
  const strokes = [...monotubeStrokes(monotube, M), ...cartridgeStrokes(cartridge, CARTRIDGE_SPEED_M_S, C)];
  const speeds = M.speeds.map(({ speed }) => `${speed} m/s`);
  return {
    'monotube-oil': stepTable(alone, [M.oil]),
    'monotube-sizes': stepTable(alone, [M.sizes]),
    'monotube-plates': bendingTable(M.stack.bendings),
    'monotube-stack': stepTable(alone, [M.stack.sheet]),
    'monotube-speeds': stepTable(
      speeds,
      M.speeds.map(({ sheet }) => sheet),
    ),
    'cartridge-sizes': stepTable(alone, [C.sizes]),
    'cartridge-plates': bendingTable([...C.midValve.bendings, ...C.base.bendings, ...C.rebound.bendings]),
    'cartridge-mid-valve': stepTable(alone, [C.midValve.sheet]),
    'cartridge-base': stepTable(alone, [C.base.sheet]),
    'cartridge-rebound': stepTable(alone, [C.rebound.sheet]),
    'cartridge-valves': stepTable(
      ['mid-valve', 'base valve', 'rebound valve'],
      [C.compression.piston, C.compression.base, C.reboundStroke.piston],
    ),
    'cartridge-check': stepTable(alone, [C.reboundStroke.check]),
    'cartridge-forces': stepTable(['compression', 'rebound'], [C.compression.force, C.reboundStroke.force]),
    stiffness: stiffnessTable(stacksToCompare(monotube, cartridge, M, C)),
    comparison: strokes.map((stroke) => `**${capital(stroke.name)}**\n\n${strokeTable(stroke)}`).join('\n\n'),
    summary: summaryTable(strokes),
  };
}

/** Each at the pressure that the middle speed puts across it. */
function stacksToCompare(
  monotube: Project,
  cartridge: Project,
  M: MonotubeByHand,
  { compression, reboundStroke }: CartridgeByHand,
): StackToCompare[] {
  const at = (name: string, project: Project, place: StackToCompare['place'], sheet: Sheet): StackToCompare => ({
    name,
    project,
    place,
    pressure_Pa: stepValue(sheet, 'P'),
  });
  return [
    at('monotube, compression', monotube, 'pistonCompression', M.speeds[1].sheet),
    at('cartridge, mid-valve', cartridge, 'pistonCompression', compression.piston),
    at('cartridge, base valve', cartridge, 'baseCompression', compression.base),
    at('cartridge, rebound', cartridge, 'pistonRebound', reboundStroke.piston),
  ];
}

export function oilOf({ fluid }: Project) {
  const { density_kg_m3: density, dynamicViscosity_Pa_s } = oilFromDocument(fluid);
  return { density, nu: dynamicViscosity_Pa_s / density };
}

const capital = (text: string): string => `${text[0].toUpperCase()}${text.slice(1)}`;

/** Radii in mm; loads of 1 N/mm and 1 MPa, so that moments are in N and lifts in mm. */
export function bendingTable(bendings: readonly Bending[]): string {
  const headings = [
    'shim',
    'D, N·m',
    'load',
    'r₀',
    'r',
    'C8',
    'C9',
    'L9 or L17',
    'M, N',
    'F2',
    'F3',
    'L3 or L11',
    'w, mm',
  ];
  return [
    row(headings),
    row(headings.map((_, i) => (i === 0 || i === 2 ? '---' : '---:'))),
    ...apart(bendings).map(({ plate, load, r0, r, C8, C9, L, M, F2, F3, G, lift }) => {
      const [name, moment, mm] = load === 'line' ? ['1l', 1e3, 1e6] : ['2l', 1e6, 1e9];
      const radii = [r0, r].map((radius) => String(Number((radius * 1e3).toFixed(3))));
      const numbers = [C8, C9, L, M * moment, F2, F3, G, lift * mm].map((value) => printed(value));
      return row([plate.name, printed(rigidity(plate)), name, ...radii, ...numbers]);
    }),
  ].join('\n');
}

/** A lift that is wanted twice is printed once. */
const apart = (bendings: readonly Bending[]): readonly Bending[] =>
  bendings.filter((one, i) => {
    const same = (other: Bending) => (['plate', 'load', 'r0', 'r'] as const).every((key) => one[key] === other[key]);
    return bendings.findIndex(same) === i;
  });
