/**
 * Which periods a stack may take: those of its ports, or of its own waves.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | waves round the circle |
 * | k | - | ports a period |
 */
import type { PortLoad } from '../../plate/periodic/periodic-load.ts';
import type { PortsUnderShims } from '../../types.ts';

export interface WavePattern {
  readonly waves: number;
  readonly harmonics: 1 | 2;
  readonly load: PortLoad;
}

/**
 * Load on the first harmonic that the ports do not make, as a share of their mean: no shim is perfect, and without it
 * a load step would jump over the onset onto the unstable round state.
 */
const IMPERFECTION = 1e-3;
/**
 * From here on the force between ports hardly differs from that on them, and the bending of so many waves resists what
 * the rim would do: the ports are spread evenly, and the stack follows its own waves. Eight still break to four.
 */
const FEW_PORTS = [1, 2, 3, 4, 5, 6, 8];

/** Whether the ports are few enough to set the period. */
export const portsSetThePeriod = (ports: PortsUnderShims | undefined): ports is PortsUnderShims =>
  ports !== undefined && FEW_PORTS.includes(ports.count) && ports.coveredFraction < 1;

/** As many waves as ports, a crest at each. */
export const onePortAPeriod = ({ count, coveredFraction }: PortsUnderShims): WavePattern => ({
  waves: count,
  harmonics: 1,
  load: { covered: coveredFraction, portsPerPeriod: 1, imperfection: 0 },
});

/** Half as many waves as ports: every other port at a crest, those between at a trough. */
export const twoPortsAPeriod = ({ count, coveredFraction }: PortsUnderShims): WavePattern => ({
  waves: count / 2,
  harmonics: 2,
  load: { covered: coveredFraction, portsPerPeriod: 2, imperfection: IMPERFECTION },
});

/** Waves of the stack's own, the force of the ports spread evenly. */
export const ownWaves = (waves: number, ports: PortsUnderShims | undefined): WavePattern => ({
  waves,
  harmonics: 1,
  load: { covered: ports?.coveredFraction ?? 1, portsPerPeriod: 0, imperfection: IMPERFECTION },
});
