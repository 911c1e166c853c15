import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../../scripts/lib/demo-project.ts';
import { withStack } from '../../../../src/solver/damper/with-stack.ts';
import { damperFromProject, type ForcePoint, forceCurve, type PortsUnderShims } from '../../../../src/solver/index.ts';
import { portsAreMany } from '../../../../src/solver/stack/many-ports.ts';

const project = demoProject('larkspur-trail-rear');
const damper = damperFromProject(project, project.baselineBuild);

/** The demo's stiffest rebound at 1 m/s, just below the onset of its waves, where ports count most. */
function softening(ports: PortsUnderShims): number {
  const ported = withStack(damper, 'rebound', { ...damper.rebound.stack, ports });
  const { coveredFraction } = ports;
  const open = { ...ported, rebound: { ...ported.rebound, ports: { ...ported.rebound.ports, coveredFraction } } };
  const [round, waved] = (['large-deflection', 'port-periodic'] as const).map((theory) => {
    const [point] = forceCurve(open, [-1], { theory }).points;
    return (point as ForcePoint).dampingForce_N;
  });
  return Math.abs(waved / round - 1);
}

describe('ports that are many', () => {
  it('are a groove all round, and any number from nine', () => {
    expect(portsAreMany(undefined)).toBe(true);
    expect(portsAreMany({ count: 3, coveredFraction: 1 })).toBe(true);
    expect(portsAreMany({ count: 9, coveredFraction: 0.3 })).toBe(true);
  });

  it.each([1, 2, 3, 4, 5])('are never %i', (count) => {
    expect(portsAreMany({ count, coveredFraction: 0.95 })).toBe(false);
  });

  it.each([
    [6, 0.85, 0.84],
    [7, 0.8, 0.79],
    [8, 0.65, 0.64],
  ])('are %i from a share of %f on', (count, enough, less) => {
    expect(portsAreMany({ count, coveredFraction: enough })).toBe(true);
    expect(portsAreMany({ count, coveredFraction: less })).toBe(false);
  });

  it('leave the round force within about one per cent of that which follows them, and no wider', () => {
    for (const ports of [
      { count: 6, coveredFraction: 0.85 },
      { count: 8, coveredFraction: 0.65 },
    ]) {
      expect(softening(ports)).toBeLessThan(0.015);
    }
    for (const ports of [
      { count: 6, coveredFraction: 0.75 },
      { count: 8, coveredFraction: 0.5 },
    ]) {
      expect(portsAreMany(ports)).toBe(false);
      expect(softening(ports)).toBeGreaterThan(0.018);
    }
    expect(softening({ count: 3, coveredFraction: 0.65 })).toBeGreaterThan(0.1);
  });
});
