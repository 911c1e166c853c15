import { describe, expect, it } from 'vitest';
import { decodeProject, encodeProject } from '../../../../src/model/codec.ts';
import { LAYOUTS } from '../../../../src/model/project.ts';
import { parseShimList } from '../../../../src/model/shim-list.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { withMeasured } from '../../../../src/ui/app/assumed-parts.ts';
import { blankProject, isPlaceholder, withList } from '../../../../src/ui/app/blank-project.ts';
import { duplicateBuild } from '../../../../src/ui/app/edits.ts';

const rowsOf = (list: string) => [...parseShimList(list).rows];

describe.each(LAYOUTS)('a blank %s', (layout) => {
  const blank = blankProject(layout);
  const { valves } = blank.builds[0];

  it('is whole, of its layout, and comes back from its file', () => {
    expect(validateProject(blank)).toMatchObject({ ok: true });
    expect(blank.damper.layout).toBe(layout);
    expect(decodeProject(encodeProject(blank))).toMatchObject({ ok: true, document: blank });
  });

  it('marks every size as an assumption, and its stacks as placeholders', () => {
    const base = layout === 'monotube' ? [] : ['baseCompression', 'refillCheck'];
    expect([...(blank.damper.assumedParts ?? [])].sort()).toEqual(
      ['gas', 'oil', 'pistonCompression', 'pistonRebound', 'sizes', ...base].sort(),
    );
    expect(blank.invented).toBeUndefined();
    for (const place of ['pistonCompression', 'pistonRebound'] as const)
      expect(isPlaceholder(blank, place, valves[place])).toBe(true);
  });

  it.each(['17 x 0.1\n9 x 0.2', '2 x 34 x 0.2\n20 x 0.1\n30 x 0.2', '44 x 0.25 (3)\n20 x 0.3'])(
    'takes the first list of paper as it is: %j',
    (list) => {
      const written = withList(blank, blank.builds[0].id, 'pistonCompression', rowsOf(list));
      expect(validateProject(written)).toMatchObject({ ok: true });
      const stack = written.builds[0].valves.pistonCompression;
      expect(stack.shims).toEqual(rowsOf(list));
      expect(isPlaceholder(written, 'pistonCompression', stack)).toBe(false);
      const { seat } = written.damper.valves.pistonCompression;
      expect(stack.shims[0].outerDiameter_mm - seat.outerDiameter_mm).toBeCloseTo(1, 9);
      expect(written.damper.valves.pistonRebound).toEqual(blank.damper.valves.pistonRebound);
    },
  );
});

describe('a piston under a list', () => {
  const blank = blankProject('monotube');
  const { id } = blank.builds[0];
  const rows = rowsOf('32 x 0.2\n18 x 0.2');

  it('stays as it is once it is measured', () => {
    const measured = withMeasured(blank, 'pistonCompression');
    expect(withList(measured, id, 'pistonCompression', rows).damper).toEqual(measured.damper);
  });

  it('stays as it is once another build stands on it', () => {
    const [two, copy] = duplicateBuild(blank, id, (name) => `${name} copy`);
    const written = withList(two, copy, 'pistonCompression', rows);
    expect(written.damper).toEqual(two.damper);
    expect(written.builds[0]).toEqual(two.builds[0]);
    expect(written.builds[1].valves.pistonCompression.shims).toEqual(rows);
  });

  it('keeps a bore that is measured, so that a face shim too large for it is refused', () => {
    const measured = withMeasured(blank, 'sizes');
    const written = withList(measured, id, 'pistonCompression', rowsOf('44 x 0.2'));
    expect(written.damper.boreDiameter_mm).toBe(blank.damper.boreDiameter_mm);
    expect(validateProject(written)).toMatchObject({ ok: false });
  });
});
