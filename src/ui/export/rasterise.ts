/** A drawing as a picture of dots. */
import { text } from '../text/en.ts';

/** @throws Error in words for the person when the browser cannot paint the drawing */
export async function rasterise(svg: string, width: number, height: number, scale: number): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width * scale;
    canvas.height = height * scale;
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (!blob) throw new Error(text.export.noPicture);
    return blob;
  } catch (error) {
    throw new Error(text.export.noPicture, { cause: error });
  } finally {
    URL.revokeObjectURL(address);
  }
}
