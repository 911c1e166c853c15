/** The drawing in words, for those who do not see it. */
import type { JSX } from 'preact';
import { show, showLength } from '../app/quantities.ts';
import type { DrawnStack } from '../app/views.ts';
import { text } from '../text/en.ts';
import { singleShims } from './geometry.ts';

export function SectionWords({ stack }: { stack: DrawnStack }): JSX.Element {
  const { state, valving } = stack;
  const size = (diameter_mm: number, thickness_mm: number): string =>
    text.difference.size(showLength(diameter_mm), showLength(thickness_mm));
  return (
    <ul class="unseen" aria-label={text.section.readAloud}>
      {singleShims(valving.shims).map(({ shim }, i) => (
        <li key={i}>
          {state
            ? text.section.describeShim(
                i + 1,
                size(shim.outerDiameter_mm, shim.thickness_mm),
                show('lift', state.shimEdgeLift_m[i]),
                show('stress', state.shimStress_Pa[i]),
              )
            : text.section.describeShimAtRest(i + 1, size(shim.outerDiameter_mm, shim.thickness_mm))}
        </li>
      ))}
    </ul>
  );
}
