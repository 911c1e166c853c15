/**
 * How each size of a damper is measured, in English: from which edge to which, with what, what often goes wrong, and what the
 * size does to the curve. Ways and traps are common practice of the workshop.
 */

interface MeasureWords {
  /** From which edge to which. */
  readonly what: string;
  /** With which tool, and how. */
  readonly how: string;
  readonly trap?: string;
  readonly curve: string;
}

const damper = {
  bore: {
    what: 'Inside of the tube where the piston runs.',
    how: 'Bore gauge set with a micrometer, at two depths and two directions.',
    trap: 'Not at the mouth of the tube: it is often relieved for fitting.',
    curve:
      'Force goes with the cube of the piston’s area where ports rule: 1 % of bore is some 6 % of force at high speed.',
  },
  rod: {
    what: 'Outside of the rod where its seal runs.',
    how: 'Micrometer, at mid length and near the worn end.',
    trap: 'Not the stepped end on which the piston sits.',
    curve: 'It sets the push of the gas, and how much oil goes through the base valve or towards the gas.',
  },
  leg: {
    what: 'Outside of the tube that slides in the main seal of the fork.',
    how: 'Caliper on the sliding tube, beside the seal.',
    trap: 'Not the damper rod: air acts on the whole tube.',
    curve: 'Force of the air goes with its square; the damping stays.',
  },
  travel: {
    what: 'Stroke of the rod, end stop to end stop.',
    how: 'Measure eye to eye extended and fully compressed; subtract. Spring off, gas let out, bump rubber off or noted.',
    trap: 'Not the travel of the wheel: that is larger by the motion ratio.',
    curve: 'It sets how far the gas is compressed, and the rise of the force towards full stroke.',
  },
  endClearance: {
    what: 'Face of the piston to the end of its chamber, at full stroke.',
    how: 'Depth gauge from the tube’s end to the end plate, less what piston and stack take.',
    curve: 'Stiffness of the oil column: in a cycle it sets the lag of the force, in the curve nothing.',
  },
  heatedMass: {
    what: 'Metal that the oil warms: tube, piston, head.',
    how: 'Kitchen scales, without springs and clamps.',
    curve: 'How fast a cycle warms the oil; in the curve nothing.',
  },
} as const satisfies Record<string, MeasureWords>;

const body = {
  portCount: {
    what: 'Ports that feed this stack.',
    how: 'Shine a light through the piston from the other side and count.',
    trap: 'Ports of the other direction open outside this seat: leave them out.',
    curve: 'Total port area: force at high speed goes with its inverse square.',
  },
  portDiameter: {
    what: 'Narrowest width of one round port.',
    how: 'Largest pin gauge or drill shank that drops through.',
    trap: 'The countersink is wider than the hole: go by what passes right through.',
    curve: 'Force at high speed, where the shims are wide open; little below.',
  },
  portArea: {
    what: 'Area of one port where it is narrowest.',
    how: 'For kidney shapes rub the face through paper with a pencil, count the square millimetres inside the outline: whole ones, and half of those cut.',
    trap: 'Rub the end where the port is narrow: the mouth under the shims is often widened.',
    curve: 'Force at high speed, where the shims are wide open; little below.',
  },
  portLength: {
    what: 'Length of a port through the piston, mouth to mouth.',
    how: 'Depth gauge or caliper across the two faces.',
    curve: 'Friction in the port: a little more force with thick, cold oil.',
  },
  covered: {
    what: 'Share of the ring under the shims that the port mouths open.',
    how: 'On the same rubbing: add up the arcs of the mouths and divide by the whole circle at their middle.',
    trap: 'Empty where a groove joins the mouths all round; the spokes between ports carry no pressure.',
    curve: 'The less is open, the later the stack lifts: more force from low speed on.',
  },
  zoneInner: {
    what: 'Inner edge of the port mouths, across the piston.',
    how: 'Caliper on the rubbing, edge to opposite edge.',
    curve: 'Where the pressure pushes: closer to the clamp it bends the shims less.',
  },
  zoneOuter: {
    what: 'Outer edge of the port mouths: where the seat land begins.',
    how: 'Caliper with knife jaws across the inner edge of the land.',
    trap: 'Where the mouth is rounded off, take the edge at which the land becomes flat.',
    curve: 'A wider zone lifts the stack sooner: less force.',
  },
  seatInner: {
    what: 'Inner edge of the land that the face shim rests on.',
    how: 'Blue the land, press a shim on it, and measure the ring it leaves, inside.',
    trap: 'A lapped or worn land is wider than it was drawn.',
    curve: 'With the outer edge, the width on which pressure falls while the shim is nearly shut.',
  },
  seatOuter: {
    what: 'Outer edge of that land.',
    how: 'The same blued ring, outside, with a caliper.',
    trap: 'Not the outside of the piston, nor the bevel beside the land.',
    curve: 'Length of the slit the oil leaves by, and how much shim hangs over: force from the opening on.',
  },
  checkRate: {
    what: 'Rate of the spring of the check plate.',
    how: 'Two known weights on it; divide the difference in weight by that in length.',
    curve: 'How fast the check opens in rebound; too stiff starves the chamber.',
  },
  checkPreload: {
    what: 'Force of that spring with the plate on its seat.',
    how: 'Free length less fitted length, times the rate.',
    curve: 'Pressure at which oil comes back in rebound: margin to air release.',
  },
  checkTravel: {
    what: 'Plate on its seat to plate at its stop.',
    how: 'Feeler gauges between plate and stop, or a dial gauge on the plate.',
    curve: 'A short lift throttles the refill at high speed in rebound.',
  },
} as const satisfies Record<string, MeasureWords>;

const piston = {
  friction: {
    what: 'Pull that keeps the rod sliding slowly.',
    how: 'Gas out: spring scale on the rod, both ways, half the sum of the two.',
    trap: 'The first jerk is larger: that is the breakaway.',
    curve: 'Added to the force in both directions, the same at every speed.',
  },
  breakaway: {
    what: 'Pull at which the rod first moves.',
    how: 'Spring scale, raised slowly, after a minute at rest.',
    curve: 'A step at the very start of the curve.',
  },
  stribeckSpeed: {
    what: 'Speed over which breakaway falls to sliding friction.',
    how: 'From a slow test on a bench; else leave it as it starts.',
    curve: 'How wide the step at the start is.',
  },
  viscous: {
    what: 'Growth of friction with speed.',
    how: 'From a bench run without valves; else 0.',
    curve: 'A straight rise of force with speed, in both directions.',
  },
  clearance: {
    what: 'Tube to piston band, on one side: half the difference of the diameters.',
    how: 'Bore gauge in the tube, micrometer over the band as fitted; subtract, halve.',
    trap: 'Feeler gauges push a soft band aside and read too much.',
    curve: 'A leak with its cube: takes force off at low speed, more when the oil is hot.',
  },
  bandLength: {
    what: 'Length of the band that runs along the tube.',
    how: 'Caliper, edge to edge of the band’s flat.',
    curve: 'The longer, the less leaks.',
  },
  eccentricity: {
    what: 'How far piston and tube are off centre, over the clearance.',
    how: 'Not measured: 0 is in the middle, 1 touches the wall.',
    curve: 'Off centre leaks up to two and a half times as much.',
  },
  stopLength: {
    what: 'Stroke over which the plunger is inside the cup.',
    how: 'Depth gauge: depth of the cup from its mouth, less what stays free at full stroke.',
    curve: 'Where in the stroke the rise of force begins; elsewhere nothing.',
  },
  plunger: {
    what: 'Outside of the plunger.',
    how: 'Micrometer, on its straight part.',
    trap: 'A tapered plunger: take it where it seals at the end.',
    curve: 'Oil pushed out of the cup: the height of the stop’s force.',
  },
  stopClearance: {
    what: 'Plunger to cup, on one side.',
    how: 'Inside of the cup less the plunger, halved.',
    curve: 'The stop’s force falls with its cube.',
  },
} as const satisfies Record<string, MeasureWords>;

const oil = {
  temperature1: {
    what: 'First temperature of the data sheet.',
    how: 'As printed beside the viscosity, mostly 40 °C.',
    curve: 'With the other three it makes the line of viscosity over temperature.',
  },
  viscosity1: {
    what: 'Kinematic viscosity at the first temperature.',
    how: 'From the data sheet of that oil; 1 cSt is 1 mm²/s.',
    trap: 'Not the “weight” on the bottle: no standard says what it is.',
    curve: 'Force through bleed, leak and slits; at high speed density rules instead.',
  },
  temperature2: {
    what: 'Second temperature of the data sheet.',
    how: 'As printed, mostly 100 °C.',
    curve: 'With the other three it makes the line of viscosity over temperature.',
  },
  viscosity2: {
    what: 'Kinematic viscosity at the second temperature.',
    how: 'From the same data sheet.',
    curve: 'How far low-speed force fades as the damper warms.',
  },
  viscosity40: {
    what: 'Kinematic viscosity at 40 °C.',
    how: 'From the data sheet of that oil; 1 cSt is 1 mm²/s.',
    trap: 'Not the “weight” on the bottle: no standard says what it is.',
    curve: 'Force through bleed, leak and slits; at high speed density rules instead.',
  },
  viscosityIndex: {
    what: 'How little the viscosity falls with temperature.',
    how: 'From the data sheet, a number without a unit.',
    curve: 'The higher, the less low-speed force fades as the damper warms.',
  },
  density: {
    what: 'Mass of a measured volume of oil.',
    how: 'From the data sheet; or weigh 100 mL in a measuring cylinder.',
    curve: 'Force at high speed goes with it; oils differ by a few percent.',
  },
  bulkModulus: {
    what: 'Stiffness of the oil without air.',
    how: 'From the data sheet, or left empty.',
    curve: 'Lag of the force in a cycle; in the curve nothing.',
  },
  entrainedAir: {
    what: 'Share of air bubbles in the oil.',
    how: 'Let a sample stand in a cylinder: the volume it loses.',
    curve: 'Softens the start of each stroke in a cycle; in the curve nothing.',
  },
} as const satisfies Record<string, MeasureWords>;

const gas = {
  gasPressure: {
    what: 'Gauge pressure of the gas with the rod at full extension.',
    how: 'Charging tool with a gauge, damper cold.',
    trap: 'Fitting the gauge lets gas into its hose: read what is left after topping up. A fork with a bleed screw at full extension is at 0.',
    curve: 'Pushes the rod out: the whole curve moves up, and oil can be sucked harder before it lets its air go.',
  },
  gasVolume: {
    what: 'Room that the gas has at full extension.',
    how: 'Depth gauge from the tube’s end to the floating piston, times the area of its bore; or fill it with oil from a syringe.',
    trap: 'Add the hollow of a dished piston.',
    curve: 'The smaller, the steeper the gas force rises through the stroke.',
  },
  exponent: {
    what: 'How the gas is compressed.',
    how: 'Not measured: 1 slow, 1.4 quick.',
    curve: 'Rise of the gas force over the stroke.',
  },
  separatorDiameter: {
    what: 'Outside of the floating piston, at its seal: the bore it runs in.',
    how: 'Bore gauge in its tube.',
    curve: 'With its friction, the pressure it holds back.',
  },
  separatorFriction: {
    what: 'Push that keeps the floating piston sliding.',
    how: 'Spring scale, tube open at both ends, no pressure.',
    curve: 'A step in pressure each time the stroke turns: it shows in a cycle.',
  },
  oilLevel: {
    what: 'Top of the tube down to the oil.',
    how: 'Fork fully compressed, spring out, bled by slow strokes, upright: rule or level syringe from the top edge.',
    trap: 'With the spring in or the fork extended the level is another one.',
    curve: 'Less air makes the last third of the travel harder; damping stays.',
  },
  tube: {
    what: 'Inside of the tube in which the level stands.',
    how: 'Caliper with inside jaws, below the thread.',
    trap: 'The cartridge stands in the oil too: leave out what it takes, or give the volume instead.',
    curve: 'It turns the level into a volume of air.',
  },
  inserted: {
    what: 'Solid volume of what comes in after measuring: spring, spacer, cap.',
    how: 'Water in a measuring cylinder: the rise when the part goes in. Steel: mass over 7.85 g/mL.',
    curve: 'It takes the room of air: harder at the end of the travel.',
  },
  poured: {
    what: 'Oil poured into the empty leg.',
    how: 'Measuring cylinder.',
    trap: 'A leg that was drained, not taken apart, keeps some oil.',
    curve: 'Less air makes the last third of the travel harder; damping stays.',
  },
  legHolds: {
    what: 'What the leg holds, up to the top edge.',
    how: 'Fully compressed, spring out, cartridge in: fill it and measure what went in.',
    curve: 'With the oil it gives the air that is left.',
  },
} as const satisfies Record<string, MeasureWords>;

const stack = {
  shimDiameter: {
    what: 'Across a shim, rim to rim.',
    how: 'Caliper, two directions.',
    trap: 'A burr from stamping reads too large.',
    curve: 'A larger shim bends further: less force.',
  },
  shimThickness: {
    what: 'One shim, face to face.',
    how: 'Micrometer, on the single shim, wiped dry. Better: five of a kind at once, divided by five.',
    trap: 'A caliper is too coarse: stiffness goes with the cube.',
    curve: '0.01 mm of a 0.15 mm shim is 20 % of its stiffness.',
  },
  clamp: {
    what: 'The edge over which the stack bends.',
    how: 'Caliper over the last shim, washer or shoulder that holds the stack at its middle.',
    trap: 'Not the bolt or post, and not the nut: the outer edge of what presses on the shims.',
    curve: 'Half a millimetre moves the force by some 5 to 15 % from the opening on.',
  },
  seatHeight: {
    what: 'Seat land above the face of the hub that carries the shims.',
    how: 'Depth gauge, or a straight edge over the land and feeler gauges at the hub.',
    trap: 'Above 0 is a preloaded face shim; a gap at the seat is below 0.',
    curve: 'Among the strongest of all: 0.02 mm moves the force by some 5 to 20 % up to middle speed.',
  },
  plateGap: {
    what: 'Top of the stack at rest to the backing plate, at the rim.',
    how: 'Feeler gauges between last shim and plate.',
    curve: 'Where the shims meet the plate the curve turns steep.',
  },
  bleedCount: {
    what: 'Holes that stay open whatever the shims do.',
    how: 'Count, with a light behind the piston or through the rod.',
    trap: 'Notches in the face shim are not among them: they stand with the shim.',
    curve: 'Low speed only: more bleed, less force before the stack opens.',
  },
  bleedDiameter: {
    what: 'Narrowest of the bleed hole.',
    how: 'Largest drill shank or pin gauge that passes.',
    trap: 'In steps of 0.05 mm: force at low speed goes with its inverse fourth power.',
    curve: 'Low speed: the smaller, the steeper the start of the curve.',
  },
  bleedLength: {
    what: 'Length of the narrow part of that hole.',
    how: 'Depth gauge, or thickness of the wall it goes through.',
    curve: 'Little: it matters with thick, cold oil.',
  },
  plateDiameter: {
    what: 'Across the backing plate.',
    how: 'Caliper, on the edge that faces the shims.',
    curve: 'The shims bend on round its edge: smaller is softer after the touch.',
  },
  coilDiameter: {
    what: 'Circle on which the coil spring presses on the last shim.',
    how: 'Caliper over the outside of the end coil, less one wire.',
    curve: 'Further out it has a longer lever on the shims: more force.',
  },
  coilRate: {
    what: 'Rate of the coil spring.',
    how: 'Two known weights on it; divide the difference in weight by that in length.',
    curve: 'How steeply the force rises once the stack is open.',
  },
  coilPreload: {
    what: 'Force of the coil spring as fitted.',
    how: 'Free length less fitted length, times the rate.',
    trap: 'A compressed spring jumps: hold it, and look after your eyes.',
    curve: 'The pressure at which the stack starts to open.',
  },
  floatTravel: {
    what: 'How far the clamped stack can rise as one.',
    how: 'Feeler gauges under the face shim with the stack lifted by hand; or length of the sleeve less height of the stack.',
    curve: 'Soft until the float is used up; then the shims bend.',
  },
  floatRate: {
    what: 'Rate of the check spring that pushes the stack down.',
    how: 'Known weights and a caliper.',
    curve: 'Slope of the force while the stack floats.',
  },
  floatPreload: {
    what: 'Force of the check spring with the stack down.',
    how: 'Free length less fitted length, times the rate.',
    curve: 'The pressure at which the stack leaves its seat.',
  },
} as const satisfies Record<string, MeasureWords>;

const shim = {
  shimBore: {
    what: 'Hole of the shim.',
    how: 'Inside jaws of a caliper; enter it only where the shim lies loose outside the clamp.',
    curve: 'A free ring lifts what lies on it: preload or a crossover further out.',
  },
  dish: {
    what: 'Rim above the middle of a coned shim at rest.',
    how: 'On a flat plate: micrometer over the cone, less the thickness.',
    trap: 'Away from the piston is above 0.',
    curve: 'Towards the piston it preloads the stack: later opening.',
  },
  notchCount: {
    what: 'Notches in the rim of the face shim.',
    how: 'Count.',
    curve: 'A bleed under the shim: less force at low speed.',
  },
  notchWidth: {
    what: 'Width of one notch along the rim.',
    how: 'Feeler gauge or pin that fits in; it must reach across the whole land.',
    curve: 'A bleed of its width by the thickness of the shim.',
  },
} as const satisfies Record<string, MeasureWords>;

const adjusters = {
  coneAngle: {
    what: 'Between opposite flanks of the needle.',
    how: 'Protractor or a photo from the side.',
    trap: 'The whole angle, not that from the axis.',
    curve: 'Blunt opens the bleed in fewer clicks.',
  },
  needlePerClick: {
    what: 'Travel of the needle per click.',
    how: 'Depth gauge on its end before and after ten clicks, divided by ten; or pitch of the thread over clicks per turn.',
    curve: 'How much one click changes at low speed.',
  },
  needleClicks: {
    what: 'Clicks from closed to fully open.',
    how: 'Turn it in without force until it stops, then count on the way out.',
    trap: 'Force spoils needle and seat.',
    curve: 'Range of the adjuster at low speed.',
  },
  poppetSeat: {
    what: 'Circle on which the cone seals.',
    how: 'Blue the cone, press it in, measure the ring on it.',
    trap: 'Not the outside of the cone.',
    curve: 'Area the pressure lifts it by: opening pressure goes with its inverse.',
  },
  poppetCone: {
    what: 'Between opposite flanks of the cone.',
    how: 'Protractor or a photo from the side.',
    curve: 'Blunt opens more area per lift.',
  },
  poppetRate: {
    what: 'Rate of the poppet’s spring.',
    how: 'Two known weights on it; divide the difference in weight by that in length.',
    curve: 'Slope of the force once it is open.',
  },
  poppetPreload: {
    what: 'Force of that spring with the adjuster closed.',
    how: 'Free length less fitted length, times the rate.',
    curve: 'The pressure at which it opens: the knee of the curve.',
  },
  poppetTravel: {
    what: 'Cone on its seat to its stop.',
    how: 'Depth gauge, or spring bound less fitted length.',
    curve: 'At its stop the curve turns steep.',
  },
  springPerClick: {
    what: 'How far a click lets the spring out.',
    how: 'Depth gauge before and after ten clicks, divided by ten.',
    curve: 'How much a click moves the opening pressure.',
  },
  springClicks: {
    what: 'Clicks from closed to fully open.',
    how: 'Turn it in without force until it stops, then count on the way out.',
    curve: 'Range of the adjuster, at the knee of the curve.',
  },
} as const satisfies Record<string, MeasureWords>;

const chassis = {
  vehicleSprung: {
    what: 'What this end of the vehicle carries without rider and load, less what moves with the wheel.',
    how: 'Scales under this wheel, the other wheel at the same height, vehicle upright; take the unsprung mass off.',
    trap: 'Fuel and luggage as it will be ridden.',
    curve: 'Critical damping goes with its square root; in the force curve nothing.',
  },
  riderSprung: {
    what: 'What the rider, dressed to ride, and the load add at this end.',
    how: 'Scales under this wheel, rider in riding position, helped upright; less the reading without.',
    curve: 'It sets the laden sag, and with it where the suspension swings.',
  },
  unsprung: {
    what: 'Wheel, tyre, brake, and half of arm, spring and damper.',
    how: 'Kitchen or parcel scales, each part by itself.',
    curve: 'How fast the wheel swings back once it is off the ground.',
  },
  wheelTravel: {
    what: 'Path of the axle from full extension to full compression, along the legs of a fork, else upright.',
    how: 'Spring off, gas let out as the maker’s manual says: rule from the axle to a mark above it, at both ends.',
    trap: 'Not the stroke of the damper. Support the vehicle so that it cannot fall.',
    curve: 'It is what sag is a share of.',
  },
  motionRatio: {
    what: 'Shaft travel for each small step of wheel travel.',
    how: 'Spring off: raise the wheel in steps of a tenth of its travel, measure the damper eye to eye at each, divide the differences.',
    trap: 'Shaft over wheel. The reciprocal, wheel over shaft, is another number.',
    curve: 'Rates and damping at the wheel go with its square.',
  },
  legAngle: {
    what: 'Lean of the legs from the upright.',
    how: 'Angle gauge or level app against a leg, on flat ground, laden as it rides.',
    trap: 'Not the angle of the steering head where a triple clamp sets the legs at another.',
    curve:
      'The ground pushes upright: rates and damping at the wheel go with one over the square of its cosine, 1.2 at 24°.',
  },
  mainRate: {
    what: 'Force of the spring for each step of shortening.',
    how: 'Spring tester, or the number on the spring; measure where it works, not near its free length.',
    curve: 'Wheel rate, sag and critical damping.',
  },
  mainPreload: {
    what: 'Free length of the spring less its length fitted, at full extension.',
    how: 'Caliper or rule on the spring alone and fitted.',
    trap: 'A preloaded spring stores energy: release it with the right tool.',
    curve: 'It moves the sag; the rate stays.',
  },
} as const satisfies Record<string, MeasureWords>;

const measures = { ...damper, ...body, ...piston, ...oil, ...gas, ...stack, ...shim, ...adjusters, ...chassis };

export type MeasureId = keyof typeof measures;

export const measureWords = {
  measures: measures as Readonly<Record<MeasureId, MeasureWords>>,
  measure: {
    none: 'Go into a box or press a letter: here it says how to measure it.',
    all: 'How to measure all of it',
    within: (precision: string) => `To ${precision}.`,
    curve: 'On the curve:',
    letterOf: (letter: string) => `(${letter} in the sketch)`,
  },
};
