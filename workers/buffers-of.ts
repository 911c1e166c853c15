/**
 * Every buffer behind the typed arrays of a result, each once, so that a reply hands them over instead of copying them.
 * Shared memory is left out: it is never handed over.
 */
export function buffersOf(value: unknown, found = new Set<ArrayBuffer>()): Set<ArrayBuffer> {
  if (ArrayBuffer.isView(value)) {
    if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
  } else if (typeof value === 'object' && value !== null) {
    for (const part of Object.values(value)) buffersOf(part, found);
  }
  return found;
}
