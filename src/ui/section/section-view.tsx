/** The section: the stack on show, drawn to a stated scale and bent by the solver's shape at the speed cursor. */
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { bodyAt, valvingAt } from '../app/places.ts';
import { showLength } from '../app/quantities.ts';
import { activeRow, place, places, project, showPlace, visibleBuilds } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { drawnStack, ghostStack, tallestLift } from '../app/views.ts';
import { ExportMenu } from '../export/export-menu.tsx';
import { sectionChoices } from '../export/section-export.ts';
import { Choice } from '../panels/choice.tsx';
import { text } from '../text/en.ts';
import { drawingHeight } from './geometry.ts';
import { SectionWords } from './section-words.tsx';
import { type Extent, laySheet, type Sheet } from './sheet.ts';
import { TitleBlock } from './title-block.tsx';
import { ValveHalf } from './valve-half.tsx';

const AXIAL: readonly string[] = ['fit', '1', '5', '10'];

const chosenExtent = signal<Extent | undefined>(undefined);
const axial = signal<string>('fit');

/** Narrow sheets start with one half, so that it can be large. */
const NARROW_PX = 440;
const extentFor = (width: number): Extent => chosenExtent.value ?? (width < NARROW_PX ? 'half' : 'full');

function Defs(): JSX.Element {
  const hatch = (id: string, turn: number): JSX.Element => (
    <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform={`rotate(${turn})`}>
      <rect class="metal-ground" width="5" height="5" />
      <path class="hatch" d="M0 0V5" />
    </pattern>
  );
  return (
    <defs>
      {hatch('hatch-right', 45)}
      {hatch('hatch-left', -45)}
      <marker
        id="flow-head"
        viewBox="0 0 8 8"
        refX="2"
        refY="4"
        markerWidth="9"
        markerHeight="9"
        markerUnits="userSpaceOnUse"
        orient="auto"
      >
        <path class="flow-head" d="M0 0.500 7.500 4 0 7.500 1.500 4Z" />
      </marker>
    </defs>
  );
}

function Halves({ sheet }: { sheet: Sheet }): JSX.Element {
  const stack = drawnStack.value;
  const ghost = ghostStack.value;
  const props = {
    sheet,
    stack,
    ghost: ghost && { stack: ghost, colour: lineOf(ghost.build.id).colour },
    body: bodyAt(project.value.damper, place.value),
    damper: project.value.damper,
    colour: lineOf(stack.build.id).colour,
  };
  return (
    <>
      <g transform={`translate(${sheet.axisX} 0)`}>
        <ValveHalf {...props} hatch="url(#hatch-right)" />
      </g>
      <g
        transform={`translate(${sheet.axisX} 0) scale(-1 1)`}
        clip-path={sheet.extent === 'half' ? 'url(#beside-axis)' : undefined}
      >
        <ValveHalf {...props} hatch="url(#hatch-left)" />
      </g>
      <path class="axis" d={`M${sheet.axisX} 4V${sheet.height - 2}`} />
    </>
  );
}

/** A bar of a round length, so that the drawing can be measured. */
function ScaleBar({ sheet }: { sheet: Sheet }): JSX.Element {
  const length_mm = 5;
  const px = length_mm * sheet.pixelsPerMm;
  return (
    <g
      class="scale-bar"
      transform={`translate(${sheet.axisX - (sheet.extent === 'full' ? sheet.x(sheet.boreRadius_mm) - 12 : -12)} 18)`}
    >
      <path d={`M0 -4V4M0 0H${px}M${px} -4V4`} />
      <text x={px + 6} y={4}>
        {showLength(length_mm)}
      </text>
    </g>
  );
}

function Drawing(): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  const { damper } = project.value;
  const tops = visibleBuilds.value.map((build) => drawingHeight(valvingAt(build, place.value), tallestLift(build.id)));
  const sheet = laySheet({
    ...size,
    extent: extentFor(size.width),
    boreRadius_mm: damper.boreDiameter_mm / 2,
    top_mm: Math.max(drawingHeight(drawnStack.value.valving, 0), ...tops),
    axial: axial.value === 'fit' ? undefined : Number(axial.value),
  });
  const stack = drawnStack.value;
  const count = stack.valving.shims.reduce((sum, row) => sum + (row.count ?? 1), 0);
  const point = (event: PointerEvent): void => {
    const row = (event.target as Element).getAttribute('data-row');
    activeRow.value = row === null ? undefined : Number(row);
  };
  return (
    <>
      <div class="drawing" ref={ref}>
        {size.width > 0 && (
          <svg
            role="img"
            aria-label={text.section.describe(stack.build.name, text.placeOf(damper.layout, place.value).name, count)}
            width={size.width}
            height={size.height}
            data-state={stack.state ? 'bent' : 'at-rest'}
            onPointerMove={point}
            onPointerLeave={() => {
              activeRow.value = undefined;
            }}
          >
            <Defs />
            <clipPath id="beside-axis">
              <rect x={0} y={0} width={26} height={size.height} />
            </clipPath>
            <Halves sheet={sheet} />
            <ScaleBar sheet={sheet} />
          </svg>
        )}
      </div>
      <TitleBlock sheet={sheet} stack={stack} />
    </>
  );
}

export function SectionView(): JSX.Element {
  return (
    <section class="sheet section" aria-label={text.section.title}>
      <header>
        <h2>{text.section.title}</h2>
        <Choice
          label={text.section.title}
          options={places.value}
          chosen={place.value}
          name={(each) => text.placeOf(project.value.damper.layout, each).tab}
          title={(each) => text.placeOf(project.value.damper.layout, each).name}
          onChoose={showPlace}
        />
        <span class="group axial">
          <Choice
            label={text.section.axial}
            options={AXIAL}
            chosen={axial.value}
            name={(each) => (each === 'fit' ? text.section.axialFit : text.section.axialFactor(Number(each)))}
            onChoose={(each) => {
              axial.value = each;
            }}
          />
          <ExportMenu of={text.export.sheets.section} choices={sectionChoices} />
        </span>
      </header>
      <Drawing />
      <SectionWords stack={drawnStack.value} />
    </section>
  );
}
