/**
 * To what a size is worth measuring: what the usual tool tells apart when it is used with care, and no finer than the force
 * asks for. Common practice of the workshop. In the document's units.
 */
import type { FieldKind } from '../app/quantities.ts';
import type { MeasureId } from '../text/measures.ts';

type Precision = readonly [FieldKind, number];

const micrometer: Precision = ['length', 0.01];
const caliper: Precision = ['length', 0.05];
const tenth: Precision = ['length', 0.1];
const rule: Precision = ['length', 1];
const feeler: Precision = ['length', 0.02];

export const PRECISIONS: Readonly<Partial<Record<MeasureId, Precision>>> = {
  vehicleSprung: ['mass', 0.5],
  riderSprung: ['mass', 0.5],
  unsprung: ['mass', 0.2],
  wheelTravel: rule,
  motionRatio: ['plain', 0.01],
  legAngle: ['angle', 0.5],
  mainRate: ['springRate', 0.5],
  mainPreload: ['length', 0.5],
  bore: feeler,
  rod: micrometer,
  leg: caliper,
  travel: ['length', 0.5],
  endClearance: rule,
  heatedMass: ['mass', 0.1],
  portDiameter: caliper,
  portArea: ['area', 0.5],
  portLength: tenth,
  covered: ['plain', 0.05],
  zoneInner: tenth,
  zoneOuter: tenth,
  seatInner: tenth,
  seatOuter: tenth,
  checkRate: ['springRate', 0.05],
  checkPreload: ['force', 0.2],
  checkTravel: caliper,
  friction: ['force', 2],
  breakaway: ['force', 2],
  clearance: ['length', 0.005],
  bandLength: tenth,
  stopLength: ['length', 0.5],
  plunger: micrometer,
  stopClearance: micrometer,
  density: ['density', 5],
  entrainedAir: ['percent', 0.5],
  gasPressure: ['gasPressure', 0.1],
  gasVolume: ['volume', 1],
  separatorDiameter: caliper,
  separatorFriction: ['force', 2],
  oilLevel: rule,
  tube: tenth,
  inserted: ['volume', 1],
  poured: ['volume', 2],
  legHolds: ['volume', 2],
  shimDiameter: caliper,
  shimThickness: ['length', 0.002],
  clamp: caliper,
  seatHeight: micrometer,
  plateGap: feeler,
  bleedDiameter: feeler,
  bleedLength: tenth,
  plateDiameter: tenth,
  coilDiameter: ['length', 0.2],
  coilRate: ['springRate', 0.5],
  coilPreload: ['force', 1],
  floatTravel: feeler,
  floatRate: ['springRate', 0.1],
  floatPreload: ['force', 0.5],
  shimBore: caliper,
  dish: micrometer,
  notchWidth: caliper,
  coneAngle: ['angle', 1],
  needlePerClick: micrometer,
  poppetSeat: tenth,
  poppetCone: ['angle', 2],
  poppetRate: ['springRate', 0.5],
  poppetPreload: ['force', 1],
  poppetTravel: caliper,
  springPerClick: micrometer,
};
