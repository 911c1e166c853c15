/** What each lesson says, in English: what to look at and why, the question, and what there was to learn. */
import type { LessonId } from '../lessons/lesson.ts';

export interface LessonText {
  readonly title: string;
  readonly steps: readonly string[];
  readonly question: string;
  readonly learnt: string;
}

export const lessonTexts: Readonly<Record<LessonId, LessonText>> = {
  curve: {
    title: 'Reading a force curve',
    steps: [
      'The force chart shows how hard the damper pushes back at each shaft speed. Drag the speed cursor from left to right and watch the section bend with it.',
      'Close to standstill the curve is steep: the oil still goes through the bleed hole. Look at “Oil paths” for the share.',
      'Then the shims open and the curve lies flatter: here the stack decides.',
      'At the fast end it steepens again. The shims are wide open and the ports themselves hold the oil back.',
    ],
    question: 'Make only the fast end of rebound softer. Open the damper form and give the rebound ports more area.',
    learnt: 'The slow part did not move: ports matter where the oil is fast, bleed and shims where it is slow.',
  },
  face: {
    title: 'Face shim thickness',
    steps: [
      'The face shim is the first row of the table: it lies on the piston and closes the ports.',
      'A shim is a plate. Its stiffness goes with the cube of its thickness, so a few hundredths of a millimetre are felt.',
      'Compare the two builds in the readout: “As it was” stays, “Yours” follows what you change.',
    ],
    question: 'Make compression softer by the thickness of the compression face shim alone.',
    learnt: 'One thickness moved the whole curve, slow speeds most. Rebound has a stack of its own and did not move.',
  },
  crossover: {
    title: 'Crossover gap',
    steps: [
      'The small second shim is the crossover: it holds the wide shims behind it off the face shim. Its thickness is the gap.',
      'Below the gap the face shim bends alone. When its rim has crossed the gap it meets the second stage, and both bend together.',
      'Drag the speed cursor and find in the section the speed at which they meet.',
      'A thicker crossover moves that speed up: softer in the middle, nearly the same at the fast end.',
    ],
    question: 'Make the middle of compression softer and keep the fast end, by the thickness of the crossover alone.',
    learnt:
      'The gap says when the second stage takes part, not how stiff it is. Once it takes part, the curves draw together again.',
  },
  clamp: {
    title: 'Clamp diameter',
    steps: [
      'The shims are held between piston and clamp. They bend from the edge of the clamp outwards.',
      'The free length from that edge to the seat works like a lever: the longer it is, the softer the same shims are.',
      'Watch the section while you change it: the bend begins further in or further out.',
    ],
    question: 'Make compression softer with the same shims, by the clamp diameter of the compression stack alone.',
    learnt:
      'A smaller clamp makes every shim of the stack softer at once. What it does to the stress stands in the shim table.',
  },
  taper: {
    title: 'Taper',
    steps: [
      'Behind the face shims of rebound lie smaller and smaller shims: the taper. The table shows them by diameter.',
      'Each of them stiffens the inner part of the stack, and together they spread the bend over the whole radius.',
      'A wide taper shim acts almost as a face shim does; a narrow one hardly reaches the rim.',
    ],
    question:
      'Make rebound firmer by the taper: add or change shims behind the face shims, and leave the face shims alone.',
    learnt: 'One taper shim is a finer step than one face shim, and the narrower it is, the finer.',
  },
  bleed: {
    title: 'Bleed against low speed',
    steps: [
      'The bleed is a hole that is always open, beside the shims. At the slowest speeds all oil goes through it.',
      'Its force grows with the square of the speed, so it soon holds back enough to open the shims.',
      'Look at “Oil paths” at the cursor, and then at the fast end: there the bleed carries next to nothing.',
      'The same hole works in both directions, so it moves compression too.',
    ],
    question: 'Make the slowest rebound softer and leave the fast one nearly as it is, by the bleed hole alone.',
    learnt: 'The bleed is the tool for low speed: much there, almost nothing at speed.',
  },
  preload: {
    title: 'Preload: the height of the seat',
    steps: [
      'The seat stands a little above the plane of the clamp. The flat face shim lies on it bent, and so presses on it at rest.',
      'Before the stack opens, the oil has to carry that pressure: the curve begins higher.',
      'Once it is open, the preload is a small part of the whole force. So it counts most at low speed.',
    ],
    question: 'Give compression more support at low speed without making the fast end harsh, by the seat height alone.',
    learnt: 'Preload lifts the beginning of the curve. Much of it, though, and the fast end comes up as well.',
  },
  temperature: {
    title: 'Oil temperature',
    steps: [
      'Cold oil is thick. Its viscosity counts in narrow, slow flow: just opened shims, long holes.',
      'In fast flow through sharp edges density counts, and that hardly changes with temperature.',
      'So a cold damper feels firm at slow movements and much the same over hard hits.',
    ],
    question: 'Find the cooler oil temperature at which slow rebound is this much firmer. Change only the temperature.',
    learnt:
      'The slow end moved several times as much as the fast end. This is why the first minutes of a ride feel firm.',
  },
  gas: {
    title: 'Gas pressure and air release',
    steps: [
      'In compression the piston pushes oil away on one side and leaves room on the other. The gas has to press oil into that room.',
      'If the pressure there falls far enough, air comes out of the oil and the damper loses its hold for a moment.',
      'The chart marks it with ▽, and “Chambers” shows how far each chamber is from it.',
      'More gas gives more margin. But it also pushes the rod out with more force, so it should be no more than needed.',
    ],
    question: 'Give the gas enough pressure that the oil keeps its hold at the cursor, with a margin, and no more.',
    learnt:
      'The margin follows the gas pressure almost one to one. What a stack needs grows with its compression force.',
  },
};
