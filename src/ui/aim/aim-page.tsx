/** The aim page: from masses, travel and springs to the damping that is wanted, and how far each build is from it. */
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { PageHead } from '../shell/page-head.tsx';
import { aimWords } from '../text/aim.ts';
import { startDistances } from './aim-distance.ts';
import { AimPanel } from './aim-panel.tsx';
import { ChassisForm } from './chassis-form.tsx';
import { startReading } from './chassis-solve.ts';
import { MakeAim } from './make-aim.tsx';
import { RatioView } from './ratio-view.tsx';
import { Readings } from './readings.tsx';
import './aim.css';

export function AimPage(): JSX.Element {
  useEffect(startReading, []);
  useEffect(startDistances, []);
  return (
    <main class="aim">
      <PageHead title={aimWords.title} />
      <div class="aim-column">
        <ChassisForm />
      </div>
      <div class="aim-column">
        <Readings />
        <RatioView />
      </div>
      <div class="aim-column">
        <AimPanel />
        <MakeAim />
      </div>
    </main>
  );
}
