/** The content of a sheet as plain data: the page draws it, the command line writes it as HTML. */

export interface SheetNode {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly SheetChild[];
}

/** A text is words of a person or of a catalogue, never markup. */
export type SheetChild = SheetNode | string;

type Children = readonly (SheetChild | readonly SheetChild[])[];

/** @param attributes whose names come from the program; their values may come from anywhere */
export const el = (tag: string, attributes: SheetNode['attributes'] = {}, ...children: Children): SheetNode => ({
  tag,
  attributes,
  children: children.flat(),
});

/** A name that a person gave, which may run from right to left. */
export const name = (words: string): SheetNode => el('bdi', {}, words);
