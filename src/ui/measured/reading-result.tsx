/** What comes out of a file as it is read now: its faults, or its points as a small drawing, with what looks wrong. */
import type { JSX } from 'preact';
import type { Measured } from '../../measured/measure.ts';
import { faultInWords } from '../app/apply.ts';
import { lineOf } from '../app/lines.ts';
import { show } from '../app/quantities.ts';
import { measuredWords } from '../text/measured.ts';
import { draft, measured } from './reading.ts';
import { stepWords } from './step-words.ts';

const words = measuredWords.dialog;
const SHOWN_FAULTS = 8;
const [WIDTH, HEIGHT, EDGE] = [360, 180, 6];

/** Speed across with its sign, force upwards. */
function Sketch({ points, outliers }: Measured): JSX.Element {
  const wrong = new Set(outliers);
  const reach = (values: readonly number[]): number => Math.max(...values.map(Math.abs)) || 1;
  const [widest, tallest] = [reach(points.speed_m_s), reach(points.force_N)];
  const x = (speed: number): number => WIDTH / 2 + (speed / widest) * (WIDTH / 2 - EDGE);
  const y = (force: number): number => HEIGHT / 2 - (force / tallest) * (HEIGHT / 2 - EDGE);
  const { colour } = lineOf(draft.value?.buildId ?? '');
  return (
    <svg class="sketch" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.chart}>
      <path class="axes" d={`M0 ${HEIGHT / 2}h${WIDTH} M${WIDTH / 2} 0v${HEIGHT}`} />
      {points.speed_m_s.map((speed, i) => {
        const [cx, cy] = [x(speed), y(points.force_N[i])];
        const cross = `M${cx - 3.5} ${cy - 3.5}l7 7m0 -7l-7 7`;
        return wrong.has(i) ? (
          <path key={i} class="outlier" d={cross} />
        ) : (
          <circle key={i} cx={cx} cy={cy} r={2.4} fill="none" stroke={colour} />
        );
      })}
    </svg>
  );
}

function Span({ points }: Measured): JSX.Element {
  const [v, F] = [points.speed_m_s, points.force_N];
  const span = words.span(
    show('speed', Math.min(...v)),
    show('speed', Math.max(...v)),
    show('force', Math.min(...F)),
    show('force', Math.max(...F)),
  );
  return <p>{span}</p>;
}

function Read({ value }: { value: Measured }): JSX.Element {
  return (
    <div class="reading-result">
      <Sketch {...value} />
      <div>
        <p>
          <strong>{words.points(value.points.speed_m_s.length, value.rawCount)}</strong>
        </p>
        <Span {...value} />
        {value.suspicions.length > 0 && (
          <ul class="suspicions" role="alert">
            {value.suspicions.map((each) => (
              <li key={each} data-suspicion={each}>
                {measuredWords.suspicion[each]}
              </li>
            ))}
          </ul>
        )}
        {value.outliersFound > 0 && <p data-outliers={value.outliersFound}>{words.outliers(value.outliersFound)}</p>}
        <ul class="hint">
          {value.steps.map((step) => (
            <li key={step.kind}>{stepWords(step, value.points.speed_m_s.length)}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}

export function ReadingResult(): JSX.Element | null {
  const read = measured.value;
  if (!read) return null;
  if (read.ok) return <Read value={read.value} />;
  const left = read.faults.length - SHOWN_FAULTS;
  return (
    <ul class="reading-faults" role="alert">
      {read.faults.slice(0, SHOWN_FAULTS).map((fault) => (
        <li key={fault.path + fault.code} class="fault" data-code={fault.code}>
          {fault.path}: {faultInWords(fault).message}
        </li>
      ))}
      {left > 0 && <li>{words.moreFaults(left)}</li>}
    </ul>
  );
}
