/**
 * The stroke played slowly: the speed cursor goes from rest to where it stood and back, as a sine, over and over. Stopping
 * puts it back.
 */
import { signal } from '@preact/signals';
import { cursorSpeed, setCursor, topSpeed } from '../app/store.ts';

export const isPlaying = signal(false);

/** One stroke, from rest to rest [ms]. */
const STROKE_MS = 4000;

let frame = 0;
let peak = 0;

/** Share of the peak at a time since the start. */
export const strokeShare = (elapsed_ms: number): number => Math.abs(Math.sin((Math.PI * elapsed_ms) / STROKE_MS));

/** Who asked for less motion is not offered any. */
export const mayPlay = (): boolean => !window.matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Leaves the cursor where it was, or at `speed_m_s`. */
export function stopStroke(speed_m_s = peak): void {
  if (!isPlaying.value) return;
  cancelAnimationFrame(frame);
  isPlaying.value = false;
  setCursor(speed_m_s);
}

export function playStroke(): void {
  if (isPlaying.value) return;
  peak = cursorSpeed.value > 0 ? cursorSpeed.value : topSpeed.value;
  isPlaying.value = true;
  let start: number | undefined;
  const step = (now: number): void => {
    start ??= now;
    setCursor(peak * strokeShare(now - start));
    frame = requestAnimationFrame(step);
  };
  frame = requestAnimationFrame(step);
}
