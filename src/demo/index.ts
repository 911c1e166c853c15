/** The demo projects: saved documents like a person's own, beside this file, read through the model. */
export interface Demo {
  readonly id: string;
  readonly title: string;
  readonly file: string;
}

export const DEMOS: readonly Demo[] = [
  {
    id: 'larkspur-trail-rear',
    title: 'Rear damper of a light trail motorcycle (invented)',
    file: 'larkspur-trail-rear.shimwright.json',
  },
];
