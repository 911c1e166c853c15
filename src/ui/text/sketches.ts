/** What each sketch shows, in English; its letters stand at the boxes beside it. */
export const sketchWords = {
  sketches: {
    'damper-monotube': 'Sketch of a monotube damper cut along its axis: tube, piston and rod, floating piston and gas.',
    'damper-reservoir':
      'Sketch of a monotube damper with a reservoir: tube, piston and rod, base valve, remote chamber.',
    'damper-twin-tube':
      'Sketch of a twin-tube damper cut along its axis: inner and outer tube, piston and rod, base valve.',
    'damper-cartridge':
      'Sketch of a fork leg cut along its axis: sliding tube in its seal, cartridge with piston, rod and base valve.',
    'ports-round': 'Sketch of a valve face with round ports from above and cut: ports, pressure zone, seat land.',
    'ports-shaped':
      'Sketch of a valve face with kidney ports from above and cut, and of the paper rubbing of a port with its squares.',
    'refill-round': 'Sketch of a refill check with round ports, cut along its axis: seat, plate, spring and stop.',
    'refill-shaped': 'Sketch of a refill check with shaped ports, cut along its axis: seat, plate, spring and stop.',
    'piston-parts': 'Sketch of a piston with its band in the tube, and of a plunger in the cup of a hydraulic stop.',
    'oil-two-points':
      'Sketch of viscosity over temperature with two points of a data sheet, and of a measuring cylinder on scales.',
    'oil-one-point':
      'Sketch of viscosity over temperature with one point and its slope, and of a measuring cylinder on scales.',
    'gas-tube': 'Sketch of the gas end of a tube with its floating piston, rod fully extended, gauge at the valve.',
    'gas-reservoir': 'Sketch of a reservoir with its floating piston, rod fully extended, gauge at the valve.',
    'gas-twin-tube': 'Sketch of the foot of a twin-tube with gas over the oil between its tubes.',
    'gas-fork-volume': 'Sketch of a fork leg, extended, with the air over its oil.',
    'gas-fork-level':
      'Sketch of a fork leg, fully compressed and without its spring, with the level measured from its top edge.',
    'gas-fork-fill': 'Sketch of a fork leg being filled from a measuring cylinder.',
    stack: 'Sketch of a stack on its piston, cut: hub, clamp, seat, backing plate, bleed hole.',
    'stack-without-bleed': 'Sketch of a stack on its valve body, cut: hub, clamp, seat, backing plate.',
    chassis:
      'Sketch of a wheel on its swing arm from the side: frame, spring over damper, wheel extended and risen by its travel.',
    'chassis-fork':
      'Sketch of a wheel in a leaning fork from the side: the axle extended and risen by its travel along the legs, their angle from the upright.',
    springs: 'Sketch of a stack under a coil spring, and of one that floats under a check spring and a backing plate.',
    'spring-adjuster': 'Sketch of a coil spring whose seat is moved by a screw with clicks.',
    shim: 'Sketch of a shim from above, and of a coned shim cut.',
    'shim-face': 'Sketch of a face shim from above with its notches, and of a coned shim cut.',
    needle: 'Sketch of a needle in the seat of its bleed hole, with its screw.',
    'base-bleed': 'Sketch of the bleed hole beside a base valve, cut.',
    poppet: 'Sketch of a cone poppet on its seat under its spring, cut.',
  },
  /** Lettered on the drawings. */
  sketchLabels: {
    gas: 'gas',
    oil: 'oil',
    air: 'air',
    extended: 'fully extended',
    compressed: 'fully compressed',
    springOut: 'spring out',
    rubbing: 'rubbing, 1 mm squares',
    hub: 'hub',
    scales: 'scales',
    logarithm: 'viscosity over temperature',
  },
};
