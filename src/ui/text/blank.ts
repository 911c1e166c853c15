/** Words about a project that starts with nothing known, in English. */
export const blankWords = {
  blank: {
    start: 'Start a new project of your own',
    startWhy: 'Choose the layout; every size is an assumption, marked until you have measured it.',
    menu: 'New project…',
    menuWhy: 'Start a project of your own damper, or from a demo',
    label: (layout: string) => `New project: ${layout}`,
    opened: (layout: string) =>
      `${layout}: a new project. Paste your stacks now; what is assumed is listed with the curves. Undo goes back to the one before.`,
    name: (layout: string) => `New damper (${layout})`,
    damper: 'My damper',
    oil: 'Damper oil',
    build: 'As it came out',
    placeholder: 'A placeholder, not your stack: paste your list, or change these shims.',
    fitted: 'The piston is assumed: its faces and clamp follow your list until you measure them.',
  },
};
