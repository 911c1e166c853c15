/**
 * What a link that carries work is made of: `#work=1.` and then the document's JSON, compressed (deflate, RFC 1951) and written
 * in base64url (RFC 4648), behind the address of a bench. Packing is done where there is a packer.
 */
import type { Project } from './project.ts';

export const KEY = '#work=';
export const FORM = '1.';

/** Longest fragment that is made: longer addresses are cut by programs that pass them on [characters]. */
export const LONGEST_MADE = 16_000;

/** One build with the damper it is for: without the notes, measurements, chassis and drawer of the project. */
export function projectOfBuild(project: Project, id: string): Project {
  const { format, version, name, invented, damper, fluid, gas, builds, tolerances } = project;
  const lean = {
    format,
    version,
    name,
    invented,
    damper,
    fluid,
    gas,
    baselineBuild: id,
    ...(tolerances && { tolerances }),
  };
  const own = builds.filter((build) => build.id === id);
  return { ...lean, builds: own, notes: '', measurements: [], chassis: {}, drawer: [] };
}
