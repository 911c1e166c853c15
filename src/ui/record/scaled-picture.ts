/** A picture from a camera made small enough to keep many: drawn anew, which also leaves out where and when it was taken. */

/** Longer side of a kept photo [pixels]: a shim of a hand-sized stack still shows its edge. */
export const LONGEST_SIDE = 1600;
const TYPE = 'image/jpeg';
const QUALITY = 0.82;

export interface Scaled {
  readonly blob: Blob;
  readonly width: number;
  readonly height: number;
}

/** @throws when the file is no picture that the browser reads */
export async function scaled(file: Blob): Promise<Scaled> {
  const bitmap = await createImageBitmap(file);
  const ratio = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  const [width, height] = [bitmap.width, bitmap.height].map((side) => Math.max(1, Math.round(side * ratio)));
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, TYPE, QUALITY));
  if (!blob) throw new Error('the picture could not be written');
  return { blob, width, height };
}
