/**
 * A project inside the fragment of an address: `#work=1.` and then its text, compressed (deflate) and written in base64url.
 * A browser sends no fragment to any server. What a link says is read as carefully as a file from a stranger: its length
 * is limited before and after unpacking, and the model's codec checks the rest.
 */
import { decodeProject, MAX_CHARACTERS } from '../../model/codec.ts';
import { FORM, KEY, LONGEST_MADE } from '../../model/link-form.ts';
import type { Project } from '../../model/project.ts';
import type { InputFault } from '../../units/fault.ts';

/** Longest fragment that is read [characters]. */
export const LONGEST_READ = 64_000;
/** One character takes up to three bytes. */
const MOST_BYTES = 3 * MAX_CHARACTERS;

/**
 * - `too-long`: more than is read from a link, packed or unpacked;
 * - `newer`: a form of link that this version does not know; `damaged`: cut or changed on its way.
 */
export type LinkRefusal =
  | { readonly reason: 'too-long' | 'newer' | 'damaged' }
  | { readonly reason: 'faults'; readonly faults: readonly InputFault[] };

export type LinkContent =
  | { readonly kind: 'none' }
  | { readonly kind: 'project'; readonly document: Project }
  | ({ readonly kind: 'refused' } & LinkRefusal);

export const canPack = (): boolean => typeof CompressionStream !== 'undefined';

function toBase64url(bytes: Uint8Array): string {
  let binary = '';
  // In pieces: a call takes only so many arguments.
  for (let i = 0; i < bytes.length; i += 0x8000) binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64url(packed: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]+$/.test(packed) || packed.length % 4 === 1) return undefined;
  return Uint8Array.from(atob(packed.replaceAll('-', '+').replaceAll('_', '/')), (c) => c.charCodeAt(0));
}

/** @returns undefined when it would be longer than `LONGEST_MADE` */
export async function packLink(document: Project): Promise<string | undefined> {
  const plain = new Blob([JSON.stringify(document)]).stream();
  const packed = await new Response(plain.pipeThrough(new CompressionStream('deflate-raw'))).arrayBuffer();
  const fragment = KEY + FORM + toBase64url(new Uint8Array(packed));
  return fragment.length > LONGEST_MADE ? undefined : fragment;
}

/** Unpacks no further than the limit, however much a few bytes would become. */
async function unpack(packed: Uint8Array<ArrayBuffer>): Promise<string | 'too-long'> {
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let [text, bytes] = ['', 0];
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    bytes += value.length;
    if (bytes > MOST_BYTES) {
      await reader.cancel();
      return 'too-long';
    }
    text += decoder.decode(value, { stream: true });
  }
}

/** What the fragment of an address carries. Never throws: a broken link is an answer too. */
export async function readLink(fragment: string): Promise<LinkContent> {
  if (!fragment.startsWith(KEY)) return { kind: 'none' };
  if (fragment.length > LONGEST_READ) return { kind: 'refused', reason: 'too-long' };
  const content = fragment.slice(KEY.length);
  if (!content.startsWith(FORM)) return { kind: 'refused', reason: /^\d+\./.test(content) ? 'newer' : 'damaged' };
  const packed = fromBase64url(content.slice(FORM.length));
  const text = packed && (await unpack(packed).catch(() => undefined));
  if (text === undefined) return { kind: 'refused', reason: 'damaged' };
  if (text === 'too-long') return { kind: 'refused', reason: 'too-long' };
  const decoded = decodeProject(text);
  return decoded.ok
    ? { kind: 'project', document: decoded.document }
    : { kind: 'refused', reason: 'faults', faults: decoded.faults };
}
