/** What warms with the damper of a document. */
import type { Project } from '../../model/project.ts';
import { oilMass } from '../cycle/oil-mass.ts';
import type { HeatedMasses } from '../fluid/heat.ts';
import { damperFromProject } from '../from-model.ts';

/** Its oil, and the metal that the document names. @throws InputError as `damperFromProject` does */
export const heatedMassesOf = (project: Project, buildId: string): HeatedMasses => ({
  oil_kg: oilMass(damperFromProject(project, buildId)),
  metal_kg: project.damper.heatedMass_kg ?? 0,
});
