/** Ports are known by the diameter of a round hole or by the area of any other shape. Going from one to the other keeps the area. */
import type { Ports } from '../../model/project.ts';

export type PortShape = 'round' | 'shaped';
export const PORT_SHAPES: readonly PortShape[] = ['round', 'shaped'];

export const shapeOf = ({ diameter_mm }: Ports): PortShape => (diameter_mm === undefined ? 'shaped' : 'round');

const thousandths = (value: number): number => Number(value.toFixed(3));

/** The same area by the other measure, to a thousandth. */
export function portsAs(shape: PortShape, ports: Ports): Ports {
  if (shape === shapeOf(ports)) return ports;
  const { diameter_mm, area_mm2, ...rest } = ports;
  return diameter_mm === undefined
    ? { ...rest, diameter_mm: thousandths(Math.sqrt((4 / Math.PI) * (area_mm2 ?? 0))) }
    : { ...rest, area_mm2: thousandths((Math.PI / 4) * diameter_mm * diameter_mm) };
}
