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
  {
    id: 'larkspur-trail-fork',
    title: 'Fork cartridge of the same trail motorcycle (invented)',
    file: 'larkspur-trail-fork.shimwright.json',
  },
  {
    id: 'wagtail-hill-climb-rear',
    title: 'Twin-tube rear damper of a hill-climb car (invented)',
    file: 'wagtail-hill-climb-rear.shimwright.json',
  },
  {
    id: 'dunnock-mountain-bike-rear',
    title: 'Mountain-bike damper with reservoir (invented)',
    file: 'dunnock-mountain-bike-rear.shimwright.json',
  },
];
