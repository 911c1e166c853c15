/** What contact needs to know of a plate: where its surfaces can touch, and the factor of its tangent. */
export interface ContactBody {
  /** Places where it can touch: its nodes, or several places round the circle of each. */
  readonly nodes: number;
  /** Unknowns from the lift of one place to that of the next. */
  readonly d: number;
  /** Unknowns in all. */
  readonly size: number;
  /** Half bandwidth. */
  readonly b: number;
  /** Lower band of the tangent, then its factor. */
  readonly band: Float64Array;
}
