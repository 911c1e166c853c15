/** The drawing of the section, laid on its sheet. */

import type { ComponentChildren, JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { valvingAt } from '../app/places.ts';
import { place, visibleBuilds } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { type DrawnStack, ghostStack, tallestLift } from '../app/views.ts';
import { text } from '../text/en.ts';
import { Dimensions, ScaleMark } from './dimensions.tsx';
import { cutStacks, type DrawnSection, drawnSection } from './drawn-section.ts';
import { drawingHeight } from './geometry.ts';
import { OilNumbers } from './oil-streams.tsx';
import { PartWalk } from './part-walk.tsx';
import { type Plan, planOf } from './plan.ts';
import { axialFactor, markPart } from './section-choices.ts';
import { sectionParts } from './section-parts.ts';
import { laySheet, legendOf, NARROW_PX, type Sheet } from './sheet.ts';
import { StressGradients, StressLegend } from './stress-shading.tsx';
import { TitleBlock } from './title-block.tsx';
import { type Ghost, ValveHalf } from './valve-half.tsx';
import { WaveCaptions } from './wave-captions.tsx';

function Hatch({ id, turn }: { id: string; turn: number }): JSX.Element {
  return (
    <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform={`rotate(${turn})`}>
      <rect class="metal-ground" width="5" height="5" />
      <path class="hatch" d="M0 0V5" />
    </pattern>
  );
}

function Defs({ sheet, section }: { sheet: Sheet; section: DrawnSection }): JSX.Element {
  const head = { viewBox: '0 0 8 8', refX: '2', refY: '4', markerWidth: '9', markerHeight: '9' };
  return (
    <defs>
      <Hatch id="hatch-right" turn={45} />
      <Hatch id="hatch-left" turn={-45} />
      <marker id="flow-head" {...head} markerUnits="userSpaceOnUse" orient="auto">
        <path class="flow-head" d="M0 0.500 7.500 4 0 7.500 1.500 4Z" />
      </marker>
      <StressGradients sheet={sheet} section={section} />
      <clipPath id="beside-axis">
        <rect x={0} y={0} width={26} height={sheet.height} />
      </clipPath>
    </defs>
  );
}

interface DrawnHalf {
  readonly plan: Plan;
  readonly ghost?: Ghost;
}

/** The same on both sides of the axis, or crest and trough of what waves. */
function halvesOf(plan: Plan): { left: DrawnHalf; right: DrawnHalf } {
  const { sheet, section } = plan;
  const stack = ghostStack.value;
  const cuts = stack && cutStacks(stack, section.body);
  const ghostOf = (cut: DrawnStack | undefined): Pick<DrawnHalf, 'ghost'> => {
    const drawn = cut ?? stack;
    return drawn ? { ghost: { stack: drawn, colour: lineOf(drawn.build.id).colour } } : {};
  };
  const planOfCut = (cut: DrawnSection | undefined): Plan => (cut ? planOf(sheet, cut) : plan);
  return {
    left: { plan: planOfCut(section.waved?.crest), ...ghostOf(cuts?.crest) },
    right: { plan: planOfCut(section.waved?.trough), ...ghostOf(cuts?.trough) },
  };
}

/** Two halves: the left one shows the oil, the right one what is measured. One half shows both. */
function Halves({ plan }: { plan: Plan }): JSX.Element {
  const { sheet, section } = plan;
  const { left, right } = halvesOf(plan);
  const half = sheet.extent === 'half';
  return (
    <>
      <g transform={`translate(${sheet.axisX} 0)`}>
        <ValveHalf {...right} hatch="url(#hatch-right)" oil={half} />
      </g>
      <g transform={`translate(${sheet.axisX} 0) scale(-1 1)`} clip-path={half ? 'url(#beside-axis)' : undefined}>
        <ValveHalf {...left} hatch="url(#hatch-left)" oil={!half} />
      </g>
      <path class="axis" d={`M${sheet.axisX} 4V${sheet.height - 2}`} />
      <OilNumbers plan={left.plan} side={half ? 1 : -1} />
      {!half && <Dimensions plan={right.plan} side={1} />}
      {section.waved && <WaveCaptions sheet={sheet} waved={section.waved} />}
    </>
  );
}

function sheetOf({ width, height }: { width: number; height: number }, { stack, damper }: DrawnSection): Sheet {
  const tops = visibleBuilds.value.map((build) => drawingHeight(valvingAt(build, place.value), tallestLift(build.id)));
  return laySheet({
    ...{ width, height },
    // One half, so that it can be large; crest and trough need both.
    extent: width < NARROW_PX && !stack.mayWave ? 'half' : 'full',
    captions: stack.mayWave,
    boreRadius_mm: damper.boreDiameter_mm / 2,
    top_mm: Math.max(drawingHeight(stack.valving, 0), ...tops),
    axial: axialFactor.value,
  });
}

const pointAt = ({ target }: PointerEvent): void => {
  const id = (target as Element).closest('[data-part]')?.getAttribute('data-part');
  markPart(sectionParts.value.find((part) => part.id === id));
};

function Picture({ sheet, section }: { sheet: Sheet; section: DrawnSection }): JSX.Element {
  const { stack, damper, outlines, waved } = section;
  const where = text.placeOf(damper.layout, place.value).name;
  return (
    <svg
      role="img"
      aria-label={`${text.section.describe(stack.build.name, where, outlines.length)}${waved ? text.wave.describe(waved.waves) : ''}`}
      width={sheet.width}
      height={sheet.height}
      data-state={stack.state ? 'bent' : 'at-rest'}
      style={{ '--build': lineOf(stack.build.id).colour }}
      onPointerMove={pointAt}
      onPointerDown={pointAt}
      onPointerLeave={() => markPart(undefined)}
    >
      <Defs sheet={sheet} section={section} />
      <Halves plan={planOf(sheet, section)} />
      <ScaleMark sheet={sheet} />
      <StressLegend section={section} {...legendOf(sheet)} />
    </svg>
  );
}

/** What stands between the drawing and its title block, such as a cursor. */
export function SectionFigure({ children }: { children?: ComponentChildren }): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  const section = drawnSection.value;
  const sheet = sheetOf(size, section);
  return (
    <div class="figure" data-figure="section">
      <div class={section.stack.mayWave ? 'drawing waved' : 'drawing'} ref={ref}>
        {size.width > 0 && <Picture sheet={sheet} section={section} />}
        <PartWalk />
      </div>
      {children}
      <TitleBlock sheet={sheet} stack={section.stack} />
    </div>
  );
}
