/** A change of force as the effects write it: small ones count, so with one digit more than a force has. */
import { inShown, showNumber, unitOfShown } from '../app/quantities.ts';

const digits = (): number => (unitOfShown('force') === 'N' ? 1 : 2);
export const forceOf = (force_N: number): string => showNumber(inShown('force', force_N), digits());
export const isNothing = (force_N: number): boolean =>
  Number.parseFloat(inShown('force', force_N).toFixed(digits())) === 0;
export const signed = (force_N: number): string =>
  `${force_N > 0 && !isNothing(force_N) ? '+' : ''}${forceOf(force_N)}`;
