/** Words about the pages of the whole job, in English; a page is known by the key of its entry. */

export interface PageWords {
  readonly name: string;
  /** What a person does there. */
  readonly why: string;
  /** The first link of the page, which leads past the top bar. */
  readonly skip: string;
}

export const pageWords = {
  nav: 'Pages',
  title: (page: string, app: string) => `${page} · ${app}`,
  opening: (page: string) => `Opening ${page}…`,
  notLoaded: (page: string) => `${page} could not be loaded. The bench works without it.`,
  tryAgain: 'Try again',
  toBench: 'Back to the bench',
  menu: 'Menu',
  projectMenu: 'Project',

  pages: {
    bench: {
      name: 'Bench',
      why: 'Build stacks and see at once what they do',
      skip: 'Skip to the shim table',
    },
    record: {
      name: 'Record',
      why: 'Write down what came out while the damper comes apart, and see what is missing',
      skip: 'Skip to the step',
    },
    aim: {
      name: 'Aim',
      why: 'From masses, travel and springs to the damping that is wanted',
      skip: 'Skip to the chassis',
    },
    search: {
      name: 'Search',
      why: 'Keep the shims owned, and search for stacks that come near a wanted curve',
      skip: 'Skip to the question',
    },
    sheet: {
      name: 'Sheet',
      why: 'Print what a hand needs to put this build together',
      skip: 'Skip to the sheet',
    },
    proof: {
      name: 'Proof',
      why: 'Run every reference case in this browser, and see how near each comes to its source',
      skip: 'Skip to the cases',
    },
  } satisfies Record<string, PageWords>,
};

export type PageId = keyof typeof pageWords.pages;
