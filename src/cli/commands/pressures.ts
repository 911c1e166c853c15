/** `shimwright pressures`: the pressure in every chamber against shaft speed, and how far it is from where oil pulls apart. */
import type { Damper } from '../../model/project.ts';
import type { ForcePoint } from '../../solver/index.ts';
import type { Outcome, Request } from '../command.ts';
import { type AskedPoint, rowOf } from '../curve-points.ts';
import { bar, gauge_bar, litresPerMinute } from '../quantities.ts';
import { type Column, whereOf } from '../render/rows.ts';
import { tellCurve } from '../tell-curve.ts';
import { theoryColumns } from '../theories.ts';

type PressureColumn = Column<ForcePoint>;

/** Oil next to the gas, beyond the base valve: the gas, and what the friction of a floating piston holds. */
const reservoirPressure = ({ compressionPressure_Pa, shaftSpeed_m_s, base }: ForcePoint): number =>
  compressionPressure_Pa - Math.sign(shaftSpeed_m_s) * (base?.drop_Pa ?? 0);

/** Absolute and above the atmosphere; people read the second off a gauge. */
const both = (key: string, heading: string, read: (point: ForcePoint) => number): PressureColumn[] => [
  { key: `${key}Absolute_bar`, read: (point) => bar(read(point)) },
  { key: `${key}Gauge_bar`, heading: [heading, 'bar gauge'], read: (point) => gauge_bar(read(point)) },
];

type Chamber = keyof NonNullable<ForcePoint['voids_m3_s']>;

const void_L_min = (chamber: Chamber, heading?: string): PressureColumn => ({
  key: `${chamber}Void_L_min`,
  ...(heading && { heading: [heading, 'L/min'] }),
  read: ({ voids_m3_s }) => litresPerMinute(voids_m3_s?.[chamber] ?? 0),
});

/** The chamber of least pressure; none where all are alike, as at rest. */
function lowestChamber(point: ForcePoint, hasBase: boolean): string | null {
  const chambers: (readonly [string, number])[] = [
    ['rebound', point.reboundPressure_Pa],
    ['compression', point.compressionPressure_Pa],
    ...(hasBase ? [['reservoir', reservoirPressure(point)] as const] : []),
  ];
  const pressures = chambers.map(([, pressure]) => pressure);
  const lowest = Math.min(...pressures);
  if (lowest === Math.max(...pressures)) return null;
  return chambers.find(([, pressure]) => pressure === lowest)?.[0] ?? null;
}

function pressureColumns({ layout }: Damper): PressureColumn[] {
  const hasBase = layout !== 'monotube';
  return [
    ...both('compressionPressure', 'compression', (p) => p.compressionPressure_Pa),
    ...both('reboundPressure', 'rebound', (p) => p.reboundPressure_Pa),
    ...(hasBase ? both('reservoirPressure', 'reservoir', reservoirPressure) : []),
    ...both('gasPressure', 'gas', (p) => p.gasPressure_Pa),
    { key: 'lowestChamber', heading: 'lowest chamber', read: (point) => lowestChamber(point, hasBase) },
    // Below 0 by as much as the lowest chamber would lie below air release, were the oil to hold together.
    {
      key: 'airReleaseMargin_bar',
      heading: ['margin', 'bar'],
      read: (p) => bar(p.gasPressure_Pa - p.gasPressureNeeded_Pa),
    },
    { key: 'airRelease', heading: 'air release', read: (p) => p.airRelease },
    ...both('gasPressureNeeded', 'gas needed', (p) => p.gasPressureNeeded_Pa),
    // Next to the gas only a floating piston that stands still opens one: that the remarks tell.
    ...(hasBase ? [void_L_min('reservoir')] : []),
    void_L_min('compression', hasBase ? 'compression void' : undefined),
    void_L_min('rebound', 'rebound void'),
  ];
}

/** Which chamber oil pulls apart in, and what would prevent it. */
function voidsOf({ asked, point }: AskedPoint): string[] {
  if (point.status !== 'converged' || !point.airRelease) return [];
  const needed = gauge_bar(point.gasPressureNeeded_Pa).toFixed(1);
  const where = Object.entries(point.voids_m3_s ?? {}).map(
    ([chamber, rate]) => `in the ${chamber} chamber a void opens at ${litresPerMinute(rate).toFixed(2)} L/min`,
  );
  return [
    [`${whereOf(asked)}: air comes out of the oil`, ...where, `${needed} bar gauge of gas would prevent it`].join('; '),
  ];
}

export const pressures = (request: Request): Promise<Outcome> =>
  tellCurve(request, {
    format: 'shimwright/pressures',
    columnsOf: (damper) => [...pressureColumns(damper), ...theoryColumns(damper.layout !== 'monotube')],
    rowsOf: (point) => [rowOf(point)],
    remarksOf: voidsOf,
  });
