/** The stack that `shimwright lift` bends: that of a stack file, or one of a build in a project. */
import { decodeAny } from '../model/codec.ts';
import type { Project } from '../model/project.ts';
import { damperFromProject, type StackInput, type StackPlace, stackFromFile } from '../solver/index.ts';
import { UsageError, type Values } from './command.ts';
import { readDocument } from './input.ts';
import { BUILD, findBuild } from './occasions.ts';

export const STACK = 'stack';
export const STACK_PLACES = ['compression', 'rebound', 'base'] as const satisfies readonly StackPlace[];

/** @throws UsageError where the options do not go with what the file holds, or the damper has no such stack */
export async function stackToLift(file: string, values: Values): Promise<StackInput> {
  const document = await readDocument(file, decodeAny);
  if (document.format === 'shimwright/project') return stackOfBuild(document, values);
  const stray = [STACK, BUILD].find((option) => values.has(option));
  if (stray) throw new UsageError(`--${stray} is of a project; this file holds one stack`);
  return stackFromFile(document);
}

function stackOfBuild(project: Project, values: Values): StackInput {
  const damper = damperFromProject(project, findBuild(project, values).id);
  const stacks: Readonly<Partial<Record<string, StackInput>>> = {
    compression: damper.compression.stack,
    rebound: damper.rebound.stack,
    ...(damper.base && { base: damper.base.compression.stack }),
  };
  const wanted = values.get(STACK);
  const stack = stacks[wanted ?? ''];
  if (stack) return stack;
  const got = wanted === undefined ? 'a project, which has several stacks' : `no ${wanted} stack in this damper`;
  throw new UsageError(`--${STACK}: got ${got}, wanted ${Object.keys(stacks).join(' or ')}`);
}
