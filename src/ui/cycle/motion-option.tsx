/** By what the shaft is moved in the cycle. */
import type { JSX } from 'preact';
import { MOTIONS, motion } from '../app/cycle-motion.ts';
import { Choice } from '../panels/choice.tsx';
import { text } from '../text/en.ts';

export const MotionOption = (): JSX.Element => (
  <Choice
    label={text.cycle.motion}
    options={MOTIONS}
    chosen={motion.value}
    name={(each) => text.cycle.motionChoice[each]}
    title={(each) => text.cycle.motionLong[each]}
    onChoose={(each) => {
      motion.value = each;
    }}
  />
);
