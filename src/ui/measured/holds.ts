/** Tests of numbers that a person types. */
export const within =
  (from: number, upTo: number) =>
  (value: number): boolean =>
    value >= from && value <= upTo;

export const isCount =
  (from: number, upTo: number) =>
  (value: number): boolean =>
    Number.isInteger(value) && within(from, upTo)(value);
