/** A spot in a document that may be broken: its value and the path that leads there. */

export interface Place {
  readonly value: unknown;
  readonly path: string;
}

type Key = string | number;

const PLAIN_KEY = /^[A-Za-z_][A-Za-z0-9_]*$/;

/** `builds[0].valves.pistonCompression`; keys that are no plain words are quoted. */
export function joinPath(path: string, key: Key): string {
  if (typeof key === 'number') return `${path}[${key}]`;
  if (!PLAIN_KEY.test(key)) return `${path}[${JSON.stringify(key)}]`;
  return path === '' ? key : `${path}.${key}`;
}

export function child({ value, path }: Place, ...keys: readonly Key[]): Place {
  let [v, p] = [value, path];
  for (const key of keys) {
    v = typeof v === 'object' && v !== null && Object.hasOwn(v, key) ? (v as Record<Key, unknown>)[key] : undefined;
    p = joinPath(p, key);
  }
  return { value: v, path: p };
}

/** Entries of a list; nothing where there is no list. */
export const entries = (place: Place): Place[] =>
  Array.isArray(place.value) ? place.value.map((value, index) => ({ value, path: joinPath(place.path, index) })) : [];

/** The value where it is a finite number. */
export const numberAt = ({ value }: Place): number | undefined =>
  Number.isFinite(value) ? (value as number) : undefined;

const UNITS: Readonly<Record<string, string>> = {
  mm: 'mm',
  mm2: 'mm²',
  GPa: 'GPa',
  MPa: 'MPa',
  N: 'N',
  N_mm: 'N/mm',
  degC: '°C',
  cSt: 'cSt',
  kg_m3: 'kg/m³',
  bar: 'bar',
  mL: 'mL',
  m_s: 'm/s',
  N_s_m: 'N·s/m',
  N_m: 'N·m',
  h: 'h',
  km: 'km',
  kg: 'kg',
  deg: '°',
  percent: '%',
  s: 's',
};

/** The unit that the last key of a path carries, as a person reads it. */
export function unitOf(path: string): string | undefined {
  const suffix = /\.?[A-Za-z0-9]+?_([A-Za-z0-9_]+)$/.exec(path)?.[1];
  return suffix === undefined ? undefined : UNITS[suffix];
}

const LONGEST_GOT = 60;

/** What stands there, short enough for a message. */
export function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  const text = typeof value === 'string' ? JSON.stringify(value) : String(value);
  return text.length > LONGEST_GOT ? `${text.slice(0, LONGEST_GOT)}…` : text;
}
