/** Words about projects and how they are kept, in English. A translation is one file of this shape. */
const plural = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** Long names are cut, so that the name with the words behind it still fits into a project file. */
const withTail = (name: string, tail: string): string => `${name.slice(0, 160)}${tail}`;

export const keeping = {
  photosLeftOut: (n: number) => `${plural(n, 'photo stays', 'photos stay')} on this machine, outside the file.`,
  forkName: (name: string) => withTail(name, ' (from another tab)'),
  copyName: (name: string) => withTail(name, ' copy'),
  unnamed: 'without a name',

  access: {
    refused: 'Nothing was changed: another tab is editing this project. “Edit here instead” at the top takes it over',
    reading: 'This project is open in another tab. Here it can be read, and it follows what is done there.',
    takeOver: 'Edit here instead',
    takeOverWhy: 'The other tab saves its last edits first; then it can only read',
    takingOver: 'Waiting for the other tab…',
    notHandedOver:
      'The other tab could not save its last edits, so it keeps the project. Go there and download a copy first.',
    nowWriting: 'The other tab has let go of this project. It can be edited here now.',
    nowReading: 'Another tab has taken this project over. Your edits were saved first.',
    followed: 'Edits in another tab',
    forked: (name: string, copy: string) =>
      `Another tab had saved “${name}” meanwhile. Neither was overwritten: your edits go on here as “${copy}”.`,
    forkedLeft: (name: string, copy: string) =>
      `A tab was closed before its last edits of “${name}” were saved, and another had saved meanwhile. Those edits are kept as “${copy}”.`,
  },

  trouble: {
    missing:
      'This browser keeps nothing here (private window, or storage switched off). Your work is in this tab only: download a copy before you close it.',
    full: 'There is no room left to keep work on this machine. Your work is in this tab only: download a copy, then delete projects for good or free disk space, and try again.',
    blocked:
      'A tab with an older Shimwright holds the kept projects. Close it, then reload this one. Until then your work is in this tab only.',
    outdated:
      'A newer Shimwright is open in another tab. Edits here are no longer kept: download a copy if there are any, then reload.',
    failed:
      'The browser could not keep your work on this machine. It is in this tab only: download a copy before you close it.',
    download: 'Download a copy',
    retry: 'Try again',
    reload: 'Reload',
  },

  update: {
    waiting: 'A new version of Shimwright is ready. Your work is kept first; then this page opens anew.',
    taken: 'Another tab has changed to a new version of Shimwright. This one still shows the version before.',
    now: 'Change to it now',
    later: 'Later',
  },

  bars: 'About this project',

  link: {
    button: 'Copy a link…',
    buttonWhy: 'Copy a link that carries a build or the project',
    offer:
      'A link carries the work itself, notes of builds included; nothing is sent anywhere. Who opens it gets a copy of their own.',
    ofBuild: (name: string) => `Copy link to ${name}`,
    ofProject: 'Copy link to the whole project',
    close: 'Close',
    copied: (name: string, characters: number) =>
      `A link with ${name} is on the clipboard (${plural(characters, 'character', 'characters')}).`,
    copyByHand: 'The browser did not allow copying. Copy this address by hand:',
    tooLong: (isBuild: boolean) =>
      `${isBuild ? 'This build' : 'This project'} is too large for a link. Save it as a file and send that${isBuild ? '' : ', or copy a link to one build'}.`,
    notHere: 'This browser cannot pack a project into a link. Save it as a file and send that.',
    arrived: (name: string, builds: readonly string[]) =>
      `This link carries “${name}” with ${plural(builds.length, 'build', 'builds')} (${builds.slice(0, 4).join(', ')}${builds.length > 4 ? ', …' : ''}). Open it as a project of its own? Yours stay as they are.`,
    open: 'Open it',
    leave: 'Leave it',
    openLabel: 'Open a link',
    opened: (name: string) => `${name} is open as a project of its own. Undo goes back to the one before.`,
    refused: {
      'too-long': 'The link was not opened: it is longer than any project. Ask for the project as a file.',
      newer: 'The link was not opened: it was made by a newer Shimwright. Reload to get it, then open the link again.',
      damaged:
        'The link was not opened: it was cut or changed on its way. Ask for it again, or for the project as a file.',
      faults: 'The link was not opened: what it carries is no sound project. Your projects are unchanged.',
    },
  },

  projects: {
    open: 'Projects…',
    openWhy: 'All projects on this machine: open, duplicate, saved states, delete',
    title: 'Projects on this machine',
    close: 'Close',
    none: 'Nothing is kept here yet. The project on the bench is kept from its first edit on.',
    here: 'open here',
    elsewhere: 'open in another tab',
    notKept: 'not changed yet, so not kept',
    facts: (changed: string, size: string) => `changed ${changed} · ${size}`,
    openShort: 'Open',
    historyShort: 'Saved states',
    duplicateShort: 'Duplicate',
    renameShort: 'Rename',
    removeShort: 'Delete',
    takeBackShort: 'Take back',
    forGoodShort: 'Delete for good…',
    undo: 'Undo',
    openIt: (name: string) => `Open ${name}`,
    duplicate: (name: string) => `Duplicate ${name}`,
    rename: (name: string) => `Rename ${name}`,
    renameTo: 'New name',
    renameDone: 'Rename',
    history: (name: string) => `Saved states of ${name}`,
    remove: (name: string) => `Delete ${name}`,
    removed: (name: string) => `${name} is deleted. It can be taken back for 30 days.`,
    heldElsewhere: (name: string) => `${name} is open in another tab. Close it there first; nothing was changed.`,
    unreadable: (name: string) => `${name} could not be read. What was kept of it is under “Kept aside”.`,
    duplicated: (name: string) => `${name} is kept as a project of its own.`,
    deleted: 'Deleted',
    deletedFacts: (day: string, size: string) => `can be taken back until ${day} · ${size}`,
    tookBack: (name: string) => `${name} is back among the projects.`,
    goneForGood: (name: string) => `${name} is deleted for good.`,
    takeBack: (name: string) => `Take back ${name}`,
    forGood: (name: string) => `Delete ${name} for good`,
    forGoodSure: (name: string) => `Delete ${name} for good, with all its saved states? This cannot be undone.`,
    forGoodYes: 'Delete for good',
    forGoodNo: 'Keep it',
    aside: 'Kept aside: could not be read',
    asideFacts: (day: string, size: string) => `saved ${day} · ${size}`,
    asideDownload: 'Download',
    asideRemove: 'Throw away',
    asideRemoved: 'The text that could not be read is gone.',
    startNew: 'Start a new project from a demo',
    demoNotFetched: (title: string) =>
      `${title} could not be fetched. Check that the bench can be reached, and try again; nothing was changed.`,
    demoOpened: (title: string) => `${title} is open as a project of its own. Undo goes back to the one before.`,
    room: (used: string, projects: number) => `${plural(projects, 'project', 'projects')}, ${used} on this machine.`,
    lasting: 'The browser has promised to keep them.',
    mayClear:
      'The browser may clear them when disk space runs short, and a private window forgets them when it closes.',
    askToKeep: 'Ask the browser to keep them',
    refusedToKeep: 'The browser made no promise. Save copies of what matters as files.',
  },

  states: {
    title: (name: string) => `Saved states of “${name}”`,
    why: 'Every save of the last minutes, then fewer the older they are: one a minute, a quarter of an hour, a day, a week.',
    newest: 'newest',
    facts: (when: string, size: string) => `${when} · ${size}`,
    after: (note: string) => `after: ${note}`,
    look: (when: string) => `Compare the state of ${when} with now`,
    restore: (when: string) => `Restore the state of ${when}`,
    asCopy: (when: string) => `As a copy: open the state of ${when} as a project of its own`,
    lookShort: 'Compare',
    restoreShort: 'Restore',
    asCopyShort: 'As a copy',
    restored: (when: string) => `The state of ${when} is back. Undo brings today’s work back.`,
    restoreLabel: (when: string) => `Restore ${when}`,
    copied: (when: string) => `The state of ${when} is open as a project of its own.`,
    unreadable: (when: string) => `The state of ${when} could not be read; it stays as it is.`,
    sameAsNow: 'the same as now',
    gone: (build: string) => `${build}: not there then`,
    added: (build: string) => `${build}: not there now`,
    changed: (build: string, difference: string) => `${build}: now → then ${difference}`,
    otherwise: 'something beside the builds differs (damper, oil, gas, names or notes)',
    back: 'All projects',
  },
};
