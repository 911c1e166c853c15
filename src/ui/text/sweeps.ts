/** Words about the force at the speed cursor under other settings, in English. */
export const sweepWords = {
  sweep: {
    temperatureAxis: (unit: string) => `Oil temperature, ${unit}`,
    temperatureNote: (low: string, high: string) =>
      `The oil alone changes: gas and sizes stay. Its viscosity is known from ${low} to ${high}; in the shaded parts it is carried on by the Walther law.`,
    set: (where: string) => `set ${where}`,
    running: 'solving…',
    table: 'Numbers of this chart',
    caption: (way: string, unit: string, speed: string) => `${way}: force, ${unit}, at ${speed}`,
    span: (low: string, high: string) => `${low} to ${high}`,
    troubled: (build: string, where: string, why: string) => `${build} did not solve everywhere at ${where}: ${why}`,
    failed: (why: string) => `The sweep could not be solved: ${why}`,
  },
};
