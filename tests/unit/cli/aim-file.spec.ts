import { describe, expect, it } from 'vitest';
import { parseForceSpeed } from '../../../src/cli/aim-file.ts';
import { UsageError } from '../../../src/cli/command.ts';

const refusal = (text: string): string => {
  try {
    parseForceSpeed(text, 'aim.csv');
  } catch (error) {
    if (error instanceof UsageError) return error.message;
    throw error;
  }
  return 'none';
};

describe('an aim in a file', () => {
  it('is a line of speed and force each, of one point or of many', () => {
    expect(parseForceSpeed('shaftSpeed_m_s,force_N\n0.1,150\n', 'aim.csv')).toEqual([
      { shaftSpeed_m_s: 0.1, force_N: 150 },
    ]);
  });

  it('may have its own order, marks and units', () => {
    // 100 lbf are 444.822 N: a pound of 0.45359237 kg under standard gravity, 9.80665 m/s2.
    const points = parseForceSpeed('Load [lbf];Velocity [mm/s]\r\n100,0;500\r\n-50,0;-250\r\n', 'aim.csv');
    expect(points.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s)).toEqual([-0.25, 0.5]);
    expect(points[0].force_N).toBeCloseTo(-222.411, 3);
    expect(points[1].force_N).toBeCloseTo(444.822, 3);
  });

  it.each([
    ['0.1,150\n0.3,240\n', 'wanted columns of speed and force under a line that names them with their units'],
    ['speed,force\n0.1,150\n', 'columns.speed: got none, wanted a unit of speed'],
    ['speed [m/s],force [N]\n0.1,150\n0.2,much\n', 'aim.csv: line 3, column 2 (force): got "much", wanted a number'],
    ['speed [m/s],force [N]\n0,20\n0.1,150\n', 'got 0 m/s, wanted shaft speeds that are not 0, each once'],
    ['speed [m/s],force [N]\n0.1,20\n0.1,150\n', 'got 0.1 m/s twice'],
    ['speed [m/s],force [N]\n', 'wanted columns of speed and force'],
    ['time [s],position [mm],force [N]\n0,1,2\n1,2,3\n2,3,4\n', 'got no point'],
    ['', 'wanted columns of speed and force'],
  ])('is refused in %j', (text, message) => expect(refusal(text)).toContain(message));
});
