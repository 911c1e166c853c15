/** What was not measured or is assumed, with what it does to the curve: the largest first. */
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { show, showPercent } from '../app/quantities.ts';
import { keyOf } from '../app/solve.ts';
import { baseline, project } from '../app/store.ts';
import { recordWords } from '../text/record.ts';
import { type Answer, FAST_M_S, largest, type MissingRow, missing, SLOW_M_S, solveMissing } from './missing-solve.ts';
import { showView, turns } from './record-state.ts';

const words = recordWords.missing;

const shareIn = (answer: Answer | undefined, speed: 'slow' | 'fast'): string => {
  if (!answer) return words.waiting;
  return 'failure' in answer ? words.failed(answer.failure) : words.share(showPercent(answer[speed]));
};

function Row({ row }: { row: MissingRow }): JSX.Element {
  const { name } = recordWords.steps[row.step];
  return (
    <tr data-unknown={row.id}>
      <th scope="row">
        {row.label} <span class="hint">{row.range}</span>
      </th>
      <td>{words.reasons[row.reason]}</td>
      <td class="number-col">{shareIn(row.answer, 'slow')}</td>
      <td class="number-col">{shareIn(row.answer, 'fast')}</td>
      <td>
        {row.reason !== 'coefficient' && (
          <button type="button" class="button" aria-label={words.measure(name)} onClick={() => showView(row.step)}>
            {words.measureShort}
          </button>
        )}
      </td>
    </tr>
  );
}

function Progress(): JSX.Element {
  const { rows, done, failure } = missing.value;
  const first = rows.find(({ answer, reason }) => reason !== 'coefficient' && largest(answer) > 0);
  const isWhole = done === rows.length;
  return (
    <div class="missing-said" role="status">
      {failure && <p class="fault">{words.baseFailed(failure)}</p>}
      {!failure && !isWhole && <p>{words.solving(done, rows.length)}</p>}
      {isWhole && <p class="hint">{words.solved(rows.length)}</p>}
      {isWhole && first && <p class="first">{words.first(first.label, showPercent(largest(first.answer)))}</p>}
      {isWhole && rows.length === 1 && <p>{words.none}</p>}
    </div>
  );
}

/** What the answers hang on: the numbers, and which steps are done. */
const keyNow = (): string =>
  `${keyOf(project.value, baseline.value)}${JSON.stringify(project.value.record?.steps ?? {})}`;

export function MissingView(): JSX.Element {
  const heading = useRef<HTMLHeadingElement>(null);
  const key = keyNow();
  useLayoutEffect(() => {
    if (turns.peek() > 0) heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, []);
  useEffect(() => {
    const stop = new AbortController();
    void solveMissing(project.peek(), stop.signal);
    return () => stop.abort();
  }, [key]);
  const { columns } = words;
  return (
    <section class="sheet missing" aria-labelledby="record-missing">
      <header>
        <h2 id="record-missing" ref={heading} tabIndex={-1}>
          {words.title}
        </h2>
      </header>
      <p class="hint">{words.why(show('speed', SLOW_M_S), show('speed', FAST_M_S))}</p>
      <Progress />
      <div class="table-room">
        <table>
          <thead>
            <tr>
              <th scope="col">{columns.item}</th>
              <th scope="col">{columns.why}</th>
              <th scope="col" class="number-col">
                {columns.low}
              </th>
              <th scope="col" class="number-col">
                {columns.high}
              </th>
              <th scope="col">
                <span class="unseen">{columns.go}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {missing.value.rows.map((row) => (
              <Row key={row.id} row={row} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
