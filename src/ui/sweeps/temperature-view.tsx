/** How the force at the speed cursor changes as the oil warms. */
import type { JSX } from 'preact';
import { SweepBoard } from './sweep-board.tsx';
import { temperatureSweep } from './temperature-sweep.ts';

export const TemperatureView = (): JSX.Element => <SweepBoard sweep={temperatureSweep} />;
