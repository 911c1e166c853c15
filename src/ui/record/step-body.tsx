/** What each step is filled in with: the forms of the bench, opened on the baseline build, and what only a record has. */
import type { JSX } from 'preact';
import type { RecordStep } from '../../model/record.ts';
import { BodyGroup } from '../panels/damper/body-group.tsx';
import { GasGroup } from '../panels/damper/gas-group.tsx';
import { OilGroup } from '../panels/damper/oil-group.tsx';
import { PistonGroup } from '../panels/damper/piston-group.tsx';
import { RefillGroup } from '../panels/damper/refill-group.tsx';
import { SizesGroup } from '../panels/damper/sizes-group.tsx';
import { UnfoldedGroups } from '../panels/field-group.tsx';
import { ShimTable } from '../panels/shim-table.tsx';
import { ClicksAsFound, MachineFacts, OilOutFacts } from './found-facts.tsx';
import { SpringList, TorqueList, WearList } from './part-lists.tsx';
import { ShimsOffWire } from './shims-off.tsx';
import { STACK_OF } from './steps.ts';

function StackBody({ step }: { step: RecordStep }): JSX.Element | null {
  const place = STACK_OF[step];
  if (!place) return null;
  return (
    <>
      <ShimsOffWire place={place} />
      <ShimTable />
    </>
  );
}

const BODIES: Readonly<Partial<Record<RecordStep, () => JSX.Element>>> = {
  machine: MachineFacts,
  clicks: ClicksAsFound,
  gas: GasGroup,
  head: () => <TorqueList step="head" />,
  springs: SpringList,
  oil: () => (
    <>
      <OilOutFacts />
      <OilGroup />
    </>
  ),
  rod: () => (
    <>
      <SizesGroup />
      <TorqueList step="rod" />
    </>
  ),
  pistonFaces: () => (
    <>
      <BodyGroup place="pistonCompression" />
      <BodyGroup place="pistonRebound" />
    </>
  ),
  baseFace: () => <BodyGroup place="baseCompression" />,
  refillCheck: () => <RefillGroup />,
  wear: () => (
    <>
      <WearList />
      <PistonGroup />
    </>
  ),
};

export function StepBody({ step }: { step: RecordStep }): JSX.Element {
  const Body = BODIES[step];
  return <UnfoldedGroups.Provider value={true}>{Body ? <Body /> : <StackBody step={step} />}</UnfoldedGroups.Provider>;
}
