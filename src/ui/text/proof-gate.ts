/** What the bench says of the proof before its page is loaded. */
export const proofGateWords = {
  link: 'Proof',
  linkWhy: 'Run every reference case in this browser, and see how near each comes to its source',
  loading: 'Opening the proof…',
  notLoaded: 'The proof could not be loaded. The bench works without it.',
  tryAgain: 'Try again',
  toBench: 'Back to the bench',
};
