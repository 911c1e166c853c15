/** Hands a text or a picture to the person as a file. */
export function download(fileName: string, content: BlobPart, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** `Trail rear, spring '26` to `trail-rear-spring-26.shimwright.json`. */
export function fileNameFor(projectName: string): string {
  const plain = projectName.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return `${words.slice(0, 60) || 'project'}.shimwright.json`;
}
