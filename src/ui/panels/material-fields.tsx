/** The metal of a stack or of one row: what bends, and at which stress it tires or yields. */
import type { JSX } from 'preact';
import type { Material, Project } from '../../model/project.ts';
import { isSteel, materialOf } from '../app/material-parts.ts';
import { keyPut, type OptionalPart, withPartChanged } from '../app/optional-parts.ts';
import { showField } from '../app/quantities.ts';
import { place, project, selectedBuild, selectedValving } from '../app/store.ts';
import { text } from '../text/en.ts';
import { Entries, type Entry } from './field-group.tsx';
import { PartSection } from './part-section.tsx';

const words = text.material;

const STIFFNESS = [
  { key: 'youngsModulus_GPa', label: words.youngsModulus, title: words.youngsModulusWhy, kind: 'modulus' },
  { key: 'poissonsRatio', label: words.poissonsRatio, title: words.poissonsRatioWhy, kind: 'plain' },
] as const;

const STRENGTHS = [
  { key: 'yieldStrength_MPa', label: words.yieldStrength, title: words.yieldStrengthWhy },
  { key: 'tensileStrength_MPa', label: words.tensileStrength, title: words.tensileStrengthWhy },
  { key: 'enduranceLimit_MPa', label: words.enduranceLimit, title: words.enduranceLimitWhy },
] as const;

function entriesOf(part: OptionalPart<Material>, material: Material): Entry[] {
  const placeholder = isSteel(material) ? words.assumed : words.unknown;
  const stiffness = STIFFNESS.map(
    ({ key, ...box }): Entry => ({
      ...box,
      value: material[key],
      edit: (value) => withPartChanged(part, { [key]: value }),
    }),
  );
  const strengths = STRENGTHS.map(({ key, ...box }): Entry => {
    const put = (value: number | undefined): Project => part.put(project.value, keyPut(material, key, value));
    return { ...box, kind: 'strength', placeholder, value: material[key], edit: put, clear: () => put(undefined) };
  });
  return [...stiffness, ...strengths];
}

interface MaterialProps {
  readonly part: OptionalPart<Material>;
  readonly title: string;
  readonly why: string;
}

/** A material that may be given or not. */
export function MaterialPart({ part, title, why }: MaterialProps): JSX.Element {
  const material = part.of(project.value);
  return (
    <PartSection part={part} title={title} why={why} boxes={[]}>
      {material && <Entries entries={entriesOf(part, material)} />}
    </PartSection>
  );
}

const summaryOf = (material: Material | undefined): string =>
  material === undefined
    ? words.springSteel
    : words.summary(showField('modulus', material.youngsModulus_GPa), String(material.poissonsRatio));

export function MaterialFields(): JSX.Element {
  const { material } = selectedValving.value;
  return (
    <details class="group-of-fields besides" data-group="material">
      <summary>
        <span class="lettering">{words.title}</span> <span class="hint">{summaryOf(material)}</span>
      </summary>
      <div class="stack-fields">
        <MaterialPart part={materialOf(selectedBuild.value.id, place.value)} title={words.ofStack} why={words.why} />
        <p class="hint wide-hint">{words.defaults(material === undefined)}</p>
        <p class="hint wide-hint">{words.curve}</p>
      </div>
    </details>
  );
}
