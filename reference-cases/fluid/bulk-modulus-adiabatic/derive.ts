/** The volume and its slope, as in `volume-slope.ts`. */
export { derive } from '../volume-slope.ts';
