/** The shims that a person owns. */

export interface DrawerShim {
  outerDiameter_mm: number;
  thickness_mm: number;
  /** How many there are, those in a damper left out. */
  count: number;
  /** Of its bore, where it matters which shaft it fits. */
  innerDiameter_mm?: number;
}

/** No two entries of one size. */
export const sizeKey = ({ outerDiameter_mm, thickness_mm, innerDiameter_mm }: Omit<DrawerShim, 'count'>): string =>
  `${outerDiameter_mm} x ${thickness_mm}${innerDiameter_mm === undefined ? '' : ` bore ${innerDiameter_mm}`}`;
