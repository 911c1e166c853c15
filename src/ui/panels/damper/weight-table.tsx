/** What a weight number on a bottle may mean: the spread of viscosities sold under each, side by side. */
import type { JSX } from 'preact';
import { showField, writeField } from '../../app/quantities.ts';
import { fetchWeights, weightSpreads, weightsFailure } from '../../app/weights.ts';
import { text } from '../../text/en.ts';

/** A bar on a common scale that ends a little beyond the thickest oil. */
function Bar({ low, high, end }: { low: number; high: number; end: number }): JSX.Element {
  return (
    <span class="spread" aria-hidden="true">
      <i style={{ left: `${(low / end) * 100}%`, width: `${((high - low) / end) * 100}%` }} />
    </span>
  );
}

function Spreads(): JSX.Element {
  const spreads = weightSpreads.value;
  const end = Math.max(...spreads.map(({ high_mm2_s }) => high_mm2_s));
  return (
    <table class="weights">
      <thead>
        <tr>
          <th scope="col">{text.damper.weight}</th>
          <th scope="col" colSpan={2}>
            {text.damper.viscosity40}
          </th>
        </tr>
      </thead>
      <tbody>
        {spreads.map(({ weight, low_mm2_s, high_mm2_s }) => (
          <tr key={weight} data-weight={weight}>
            <th scope="row">{weight}</th>
            <td>
              <Bar low={low_mm2_s} high={high_mm2_s} end={end} />
            </td>
            <td class="number-col">
              {text.damper.weightSpan(writeField('viscosity', low_mm2_s), showField('viscosity', high_mm2_s))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function WeightTable(): JSX.Element {
  return (
    <details
      class="weight-table"
      onToggle={(event) => {
        if (event.currentTarget.open) void fetchWeights();
      }}
    >
      <summary>{text.damper.weights}</summary>
      <p class="hint">{text.caution.oil}</p>
      {weightSpreads.value.length > 0 && <Spreads />}
      {weightsFailure.value !== undefined && (
        <p class="fault" role="alert">
          {weightsFailure.value}
        </p>
      )}
      <p class="hint">{text.damper.weightsSource}</p>
    </details>
  );
}
