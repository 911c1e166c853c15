/**
 * Steps, checks and cautions of the build sheet, in English. They are common practice of the trade, written from memory, without
 * any number that belongs in a maker's manual.
 */
import type { Layout } from '../../model/project.ts';

export const stepWords = {
  assemble: {
    title: 'Assemble and bleed',
    steps: [
      'Everything clean and free of lint; new seals and O-rings, oiled; shaft straight and without scores.',
      'Lay the shims on in the order above. None may hang on a shoulder or a thread: each must turn by hand before clamping.',
      'Clamp to the maker’s torque. Hold against a light: the face shim lies on its seat all round.',
      'Fill slowly with fresh oil. Bleed by slow, short strokes until no more bubbles rise; wait, and stroke again.',
    ],
    gas: {
      monotube: 'Set the floating piston to the maker’s depth with no air under it, close, then have the gas charged.',
      'monotube-reservoir':
        'Set the floating piston or bladder of the reservoir as the maker says, with no air under it, then have the gas charged.',
      'twin-tube':
        'Close upright with the gas on top, at the maker’s oil volume; never work it lying down before it is bled upright.',
      cartridge:
        'Set the oil level compressed, spring out, after the cartridge is bled; both legs alike where both have one.',
    } satisfies Record<Layout, string>,
  },
  check: {
    title: 'Check by hand',
    steps: [
      'Full travel both ways: no binding, no knock, no soft spot where the direction turns (a soft spot is air).',
      'Every adjuster turns through all its clicks and changes what the hand feels; set to the baseline above.',
      'Wiped dry and left standing overnight: no oil at seals, valves or joints, and the pressure held.',
      'Fitted, spring out where it can be: full travel without touching frame, hose or cable.',
      'Static sag measured and written down, unladen and with the rider.',
    ],
  },
  ride: {
    title: 'First ride',
    steps: [
      'Before: axle, clamp and damper bolts to torque; brakes work; steering turns lock to lock with no pull on hose or cable.',
      'Bounce it standing: it returns once, without a knock.',
      'Slowly, near home, on flat ground; then stop: oil, heat, noises, bolts.',
      'After a longer ride: torque, clicks, sag and leaks again.',
    ],
  },
  cautions: {
    title: 'Cautions',
    gas: 'Gas under pressure can kill. Let it out before opening anything; charge with nitrogen only, by qualified people.',
    items: [
      'Springs under load can kill: use the right compressor, and stand clear of their line.',
      'A damper changes braking and steering. Do not ride or drive with a doubt about springs, brakes or steering.',
      'The maker’s manual and local rules come first, for torque, pressure, oil, disposal and use on the road.',
    ],
  },
};
