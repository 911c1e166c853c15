/** The blocks of the pages on the calculation by hand. */
import { strokesTable, summaryTable } from './comparison.ts';
import type { Direction, StrokeByHand } from './dampers.ts';
import type { HandDemo } from './demos.ts';
import { bendingTable } from './plates.ts';
import { type Sheet, stepTable } from './sheet.ts';
import { stiffnessTable } from './stiffness.ts';

/** Blocks by the name of their marks. */
export type Blocks = Readonly<Record<string, string>>;

/** By page, under docs. */
export const handPages = (demos: readonly HandDemo[]): Readonly<Record<string, Blocks>> => ({
  ...Object.fromEntries(demos.map((demo) => [demo.page, demoBlocks(demo)])),
  'hand-calculation.md': { stiffness: stiffnessTable(demos) },
  'theory.md': { summary: summaryTable(demos) },
});

function demoBlocks(demo: HandDemo): Blocks {
  const { oil, sizes, valves, strokes } = demo.hand;
  const stacks = valves.flatMap(({ place, stack }) => [
    [`${place}-plates`, bendingTable(stack.bendings)],
    [`${place}-stack`, stepTable(['value'], [stack.sheet])],
  ]);
  const directions = (['compression', 'rebound'] as const).flatMap((direction) => [
    ...strokeBlocks(
      direction,
      strokes.filter((stroke) => stroke.direction === direction),
    ),
    [`${direction}-compared`, strokesTable(demo, direction)],
  ]);
  return {
    oil: stepTable(['value'], [oil]),
    sizes: stepTable(['value'], [sizes]),
    ...Object.fromEntries([...stacks, ...directions]),
  };
}

const SHEETS = ['piston', 'base', 'force'] as const;

/** A column for every speed. */
function strokeBlocks(direction: Direction, strokes: readonly StrokeByHand[]): string[][] {
  const headings = strokes.map(({ speed }) => `${speed} m/s`);
  return SHEETS.flatMap((name) => {
    const sheets = strokes.map((stroke) => stroke[name]).filter((sheet): sheet is Sheet => sheet !== undefined);
    return sheets.length > 0 ? [[`${direction}-${name}`, stepTable(headings, sheets)]] : [];
  });
}
