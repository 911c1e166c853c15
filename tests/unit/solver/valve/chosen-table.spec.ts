import { describe, expect, it } from 'vitest';
import type { WavesOnset } from '../../../../src/solver/damper/types.ts';
import { closedPath } from '../../../../src/solver/restriction/closed.ts';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import type { PortsUnderShims, Theory } from '../../../../src/solver/types.ts';
import { chosenTable, type TableChoice } from '../../../../src/solver/valve/chosen-table.ts';
import { type ValveSetting, valveOn } from '../../../../src/solver/valve/explicit-valve.ts';
import { type LinearStack, linearStack } from '../../../helpers/linear-stack.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';

const ROUND: LinearStack = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 5e4 };
/** Waves make a stack softer. */
const WAVED: LinearStack = { ...ROUND, compliance_m_Pa: 0.7e-9 };
const FLOW = 3e-4;

interface Case {
  readonly onset?: WavesOnset;
  readonly ports?: PortsUnderShims;
  readonly round?: LinearStack;
  readonly waved?: LinearStack;
  readonly choice?: TableChoice;
}

function settingWith(ports: PortsUnderShims | undefined): ValveSetting {
  const { compression, fluid } = MONOTUBE;
  const valve = { ...compression, stack: { ...compression.stack, ...(ports && { ports }) } };
  return { valve, bleed: closedPath, leakage: closedPath, fluid, coefficients: DEFAULT_COEFFICIENTS };
}

/** The table that is chosen, and at which pressures each theory was asked. */
function chosen({ onset = { status: 'none' }, ports, round = ROUND, waved = WAVED, choice }: Case = {}) {
  const asked: Partial<Record<Theory, number[]>> = {};
  const setting = settingWith(ports);
  const found = chosenTable(
    {
      lift: (stack, pressures_Pa, theory) => {
        asked[theory] = [...(asked[theory] ?? []), ...pressures_Pa];
        return linearStack(theory === 'port-periodic' ? waved : round)(stack, pressures_Pa, theory);
      },
      onset: () => onset,
    },
    [setting],
    choice ?? { theory: 'auto' },
    FLOW,
  );
  return { ...found, asked, setting };
}

const used_Pa = (): number => {
  const { setting, ...table } = chosen();
  const end = valveOn(table, setting).atFlow(FLOW);
  return end.status === 'converged' ? end.shimPressure_Pa : Number.NaN;
};
const ruffling = (pressure_Pa: number): WavesOnset => ({ status: 'found', pressure_Pa, waves: 4 });

describe('the table of a stack under auto', () => {
  it('is the round one of a stable stack under a groove, which is then the only one solved', () => {
    const { table, asked } = chosen();
    expect(table.theory).toBe('large-deflection');
    expect(table).not.toHaveProperty('leavesRound');
    expect(Object.keys(asked)).toEqual(['large-deflection']);
  });

  it('stays round where the onset lies beyond the largest flow, though the table reaches it', () => {
    const beyond = 1.01 * used_Pa();
    const { table } = chosen({ onset: ruffling(beyond) });
    expect(table.theory).toBe('large-deflection');
    expect(table.pressure_Pa.at(-1)).toBeGreaterThan(beyond);
  });

  it('follows the waves where the onset lies before it, and solves the round pressures once', () => {
    const { table, asked, end } = chosen({ onset: ruffling(0.99 * used_Pa()) });
    expect(table.theory).toBe('port-periodic');
    expect(end.status).toBe('reached');
    const round = asked['large-deflection'] ?? [];
    expect(new Set(round).size).toBe(round.length);
  });

  it.each<[string, Case]>([
    ['a few ports', { ports: { count: 4, coveredFraction: 0.7 } }],
    ['a stability that could not be told', { onset: { status: 'unknown' } }],
    ['a round state that does not solve', { round: { ...ROUND, failsAbove_Pa: 4e5 } }],
  ])('follows the waves with %s', (_, given) => {
    expect(chosen(given).table.theory).toBe('port-periodic');
  });

  it('goes back to the round table where the waved one does not reach the flow, and says why', () => {
    const { table, end } = chosen({ onset: ruffling(2e5), waved: { ...WAVED, failsAbove_Pa: 1.5e5 } });
    expect(table.theory).toBe('large-deflection');
    expect(end.status).toBe('reached');
    expect(table).toMatchObject({ leavesRound: 'waves', fallback: { status: 'not-converged' } });
    expect(table.fallback?.reason).toContain('asked to fail');
  });

  it('keeps the waved table of a stack that ruffles where neither reaches the flow, the round one otherwise', () => {
    const round = { ...ROUND, failsAbove_Pa: 1.5e5 };
    const waved = { ...WAVED, failsAbove_Pa: 1.5e5 };
    expect(chosen({ round, waved, onset: ruffling(1e5) }).table.theory).toBe('port-periodic');
    const { table, end } = chosen({ round, waved });
    expect(table).toMatchObject({ theory: 'large-deflection', leavesRound: 'not-solved' });
    expect(table).not.toHaveProperty('fallback');
    expect(end.status).toBe('not-converged');
  });
});

describe('a theory that was named', () => {
  it('is the one that is solved, whatever the stack does', () => {
    for (const theory of ['small-deflection', 'large-deflection', 'port-periodic'] as const) {
      const { table, asked } = chosen({ choice: { theory }, onset: ruffling(1e4) });
      expect(table.theory).toBe(theory);
      expect(Object.keys(asked)).toEqual([theory]);
      expect(table).not.toHaveProperty('leavesRound');
    }
  });

  it('says under large deflection what auto would leave it for, when asked', () => {
    const choice = { theory: 'large-deflection', marked: true } as const;
    expect(chosen({ choice }).table).not.toHaveProperty('leavesRound');
    expect(chosen({ choice, onset: ruffling(1e5) }).table.leavesRound).toBe('waves');
    expect(chosen({ choice, ports: { count: 3, coveredFraction: 0.6 } }).table.leavesRound).toBe('ports');
    const { table, asked } = chosen({ choice, round: { ...ROUND, failsAbove_Pa: 4e5 } });
    expect(table.leavesRound).toBe('not-solved');
    expect(Object.keys(asked)).toEqual(['large-deflection']);
  });
});
