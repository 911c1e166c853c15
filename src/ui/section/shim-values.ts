/** What each single shim does at a pressure across the stack: looked up in its table, straight between two pressures. */
import type { ConvergedLift, StackTable } from '../app/solved.ts';
import { bracketIn } from './shape-at.ts';
import { extremesOf, liftAt, shapeBetween } from './wave-shape.ts';

export interface ShimValues {
  /** Of the rim, its mean round the circle where the stack waves. */
  readonly lift_m: number;
  /** Of the rim where that of the face shim stands highest and lowest; absent where the stack is round. */
  readonly wave?: { readonly crest_m: number; readonly trough_m: number };
  readonly stress_Pa: number;
  /** Shares of the limits of life and yield that are used; absent where the strength of the metal is not known. */
  readonly use?: { readonly life: number; readonly yield: number };
}

function rimWaves(a: ConvergedLift, b: ConvergedLift, share: number): ShimValues['wave'][] | undefined {
  if (!a.wave?.waves && !b.wave?.waves) return undefined;
  const shape = shapeBetween(a, b, share);
  const extremes = extremesOf(shape);
  if (!extremes) return undefined;
  const rim = (shim: number, phi: number): number => liftAt(shape, shim, phi).at(-1) ?? 0;
  return shape.lift_m.map((_, s) => ({ crest_m: rim(s, extremes.crest), trough_m: rim(s, extremes.trough) }));
}

/** Piston side first; nothing where the table is empty or the pressure lies beyond its end. */
export function shimValuesAt(table: StackTable, at_Pa: number): ShimValues[] | undefined {
  const found = bracketIn(table, at_Pa);
  if (!found) return undefined;
  const { points, life } = table;
  const { low, high, share } = found;
  const between = (a: number, b: number): number => a + (b - a) * share;
  const [a, b] = [points[low], points[high]];
  const waves = rimWaves(a, b, share);
  return a.shimEdgeLift_m.map((lift, s) => {
    const uses = life?.shims[s];
    return {
      lift_m: between(lift, b.shimEdgeLift_m[s]),
      ...(waves && { wave: waves[s] }),
      stress_Pa: between(a.shimStress_Pa[s], b.shimStress_Pa[s]),
      ...(uses && {
        use: {
          life: between(uses[low].fatigue, uses[high].fatigue),
          yield: between(uses[low].yield, uses[high].yield),
        },
      }),
    };
  });
}
