/** Words around the build sheet on its page, in English; those on the sheet itself are in `src/sheet/text`. */

export const sheetPageWords = {
  title: 'Build sheet',
  paper: 'The sheet as it prints',
  print: 'Print…',
  printWhy: 'Print the sheet, or keep it as a PDF from the print dialog',
  save: 'Save as a file',
  saveWhy: 'One HTML file that needs nothing else',
  file: 'build sheet',
  saved: (file: string) => `The sheet was handed over as ${file}.`,
  build: 'Build',
  unnamed: 'without a name',
  fields: 'Written onto the sheet',
  firstStack: 'Goes on the shaft first',
  firstStacks: {
    'not-said': 'Not said: told from the piston',
    pistonCompression: 'Compression stack',
    pistonRebound: 'Rebound stack',
  },
  torques: { pistonTorque_N_m: 'Piston clamp torque', baseTorque_N_m: 'Base valve torque' },
  unknown: 'unknown',
  lines: { torqueSource: 'Torque from', threadLocker: 'Thread-locker', notes: 'Notes' },
  hints: {
    torqueSource: 'maker’s manual, page',
    threadLocker: 'which, and on which thread',
    notes: 'what else the hand must know',
  },
  torqueWhy: 'A torque belongs to the maker’s manual. Left empty, the sheet has a line to write on, and no number.',
};
