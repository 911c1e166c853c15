/** What else makes a valve beside its shims: clamp, preload, backing plate, bleed. */
import type { JSX } from 'preact';
import type { Bleed } from '../../model/project.ts';
import { BACKING_PLATE } from '../app/part-groups.ts';
import { place, selectedBuild, selectedValving, withBuild, withValving } from '../app/store.ts';
import { Measured } from '../sketches/measured.tsx';
import { text } from '../text/en.ts';
import { NumberField } from './number-field.tsx';
import { PartField } from './part-fields.tsx';
import { PLATE_GAP } from './spring-fields.tsx';

function BleedFields(): JSX.Element {
  const { bleed, id } = selectedBuild.value;
  const change = (part: Partial<Bleed>) => withBuild(id, (build) => ({ ...build, bleed: { ...build.bleed, ...part } }));
  return (
    <>
      <NumberField
        label={text.stack.bleedCount}
        dimension="bleedCount"
        kind="count"
        value={bleed.count}
        edit={(count) => change({ count })}
      />
      <NumberField
        label={text.stack.bleedDiameter}
        dimension="bleedDiameter"
        kind="length"
        value={bleed.diameter_mm}
        edit={(diameter_mm) => change({ diameter_mm })}
      />
      <NumberField
        label={text.stack.bleedLength}
        dimension="bleedLength"
        kind="length"
        value={bleed.length_mm}
        edit={(length_mm) => change({ length_mm })}
      />
    </>
  );
}

export function StackFields(): JSX.Element {
  const valving = selectedValving.value;
  const hasBleed = place.value !== 'baseCompression';
  return (
    <div class="stack-form">
      <Measured sketch={hasBleed ? 'stack' : 'stack-without-bleed'}>
        <NumberField
          label={text.stack.clamp}
          dimension="clamp"
          kind="length"
          value={valving.clampDiameter_mm}
          edit={(clampDiameter_mm) => withValving((v) => ({ ...v, clampDiameter_mm }))}
        />
        <NumberField
          label={text.stack.seatHeight}
          dimension="seatHeight"
          title={text.stack.seatHeightWhy}
          kind="length"
          value={valving.seatHeight_mm}
          edit={(seatHeight_mm) => withValving((v) => ({ ...v, seatHeight_mm }))}
        />
        <PartField group={BACKING_PLATE} entry={PLATE_GAP} />
        {hasBleed && <BleedFields />}
      </Measured>
    </div>
  );
}
