/**
 * What is written behind the sizes of a shim: `24 x 0.3 ring 20`, `30 x 0.2 dish -0.05`, `30 x 0.1 notches 4 x 2`,
 * `30 x 0.2 material 120 GPa 0.34`; several may follow one another.
 */
import type { InputFault } from '../units/fault.ts';
import type { Material, ShimRow } from './project.ts';
import { inMillimetres, plainText, UNITS } from './shim-list-tokens.ts';

export type Features = Pick<ShimRow, 'innerDiameter_mm' | 'dish_mm' | 'material' | 'notches'>;

type Word = 'ring' | 'dish' | 'notches' | 'material';

export interface WrittenFeature {
  readonly word: Word;
  /** What stands behind the word. */
  readonly text: string;
}

const WORDS: Readonly<Record<string, Word>> = {
  ring: 'ring',
  bore: 'ring',
  dish: 'dish',
  notch: 'notches',
  notches: 'notches',
  material: 'material',
};

const WORD = /\b(ring|bore|dish|notch(?:es)?|material)\b/i;

/** The sizes, and the features written behind them. */
export function splitFeatures(entry: string): { shim: string; features: WrittenFeature[] } {
  const [shim, ...rest] = entry.split(WORD);
  const features: WrittenFeature[] = [];
  for (let i = 0; i < rest.length; i += 2)
    features.push({ word: WORDS[rest[i].toLowerCase()], text: signed(rest[i + 1]) });
  return { shim, features };
}

/** Plain signs, as in the sizes; cells of a spreadsheet are put together again. */
const signed = (text: string): string => plainText(text.replace(/\t/g, ' '));

const NUMBER = String.raw`((?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)`;
const UNIT = String.raw`\s*(mm|inch(?:es)?|in|thou|["″])?`;
const LENGTH = new RegExp(`^([+-]?)\\s*${NUMBER}${UNIT}$`, 'i');
const NOTCHES = new RegExp(`^(\\d+)\\s*x\\s*${NUMBER}${UNIT}$`, 'i');
const strength = (word: string): string => String.raw`(?:\s+${word}\s+${NUMBER}(?:\s*MPa)?)?`;
const MATERIAL = new RegExp(
  String.raw`^${NUMBER}(?:\s*GPa)?\s+${NUMBER}${['yield', 'tensile', 'endurance'].map(strength).join('')}$`,
  'i',
);

function materialOf([, E, nu, ...strengths]: readonly (string | undefined)[]): Material {
  const [yieldStrength_MPa, tensileStrength_MPa, enduranceLimit_MPa] = strengths.map(
    (written) => written && Number(written),
  );
  const given = Object.entries({ yieldStrength_MPa, tensileStrength_MPa, enduranceLimit_MPa });
  return {
    youngsModulus_GPa: Number(E),
    poissonsRatio: Number(nu),
    ...Object.fromEntries(given.filter(([, value]) => value !== undefined)),
  };
}

type Refusal = Pick<InputFault, 'code' | 'wanted'>;

const NOT_A_FEATURE: Refusal = {
  code: 'shims.list.feature',
  wanted: 'each once: ring 20, dish 0.05, notches 4 x 2, material 206 GPa 0.3',
};
const NO_UNIT: Refusal = {
  code: 'shims.list.unit',
  wanted: 'a unit behind every size, such as 1.2 in x 6 thou ring 0.8 in',
};

/** @param needsUnit true where a bare number could be millimetres or inches */
export function readFeatures(features: readonly WrittenFeature[], needsUnit: boolean): Features | Refusal {
  const read: Features = {};
  const words = new Set(features.map(({ word }) => word));
  if (words.size < features.length) return NOT_A_FEATURE;
  for (const { word, text } of features) {
    const length = (match: RegExpExecArray, at: number): number =>
      inMillimetres(Number(match[at]), UNITS[match[at + 1]?.toLowerCase() ?? 'mm']);
    const match = { ring: LENGTH, dish: LENGTH, notches: NOTCHES, material: MATERIAL }[word].exec(text);
    if (!match) return NOT_A_FEATURE;
    if (needsUnit && word !== 'material' && match[3] === undefined) return NO_UNIT;
    if (word === 'material') read.material = materialOf(match);
    else if (word === 'notches') read.notches = { count: Number(match[1]), width_mm: length(match, 2) };
    else if (word === 'dish') read.dish_mm = (match[1] === '-' ? -1 : 1) * length(match, 2);
    else if (match[1] === '-') return NOT_A_FEATURE;
    else read.innerDiameter_mm = length(match, 2);
  }
  return read;
}

/** Text that `readFeatures` reads back exactly, with a space before each feature. */
export function writeFeatures({ innerDiameter_mm, dish_mm, notches, material }: Features): string {
  return [
    innerDiameter_mm !== undefined && ` ring ${innerDiameter_mm}`,
    dish_mm !== undefined && ` dish ${dish_mm}`,
    notches && ` notches ${notches.count} x ${notches.width_mm}`,
    material && writeMaterial(material),
  ]
    .filter(Boolean)
    .join('');
}

function writeMaterial({ youngsModulus_GPa, poissonsRatio, ...limits }: Material): string {
  const strengths = [
    ['yield', limits.yieldStrength_MPa],
    ['tensile', limits.tensileStrength_MPa],
    ['endurance', limits.enduranceLimit_MPa],
  ].map(([word, value]) => (value === undefined ? '' : ` ${word} ${value} MPa`));
  return ` material ${youngsModulus_GPa} GPa ${poissonsRatio}${strengths.join('')}`;
}
