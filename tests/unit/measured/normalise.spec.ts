import { describe, expect, it } from 'vitest';
import { guessColumns, type Mapping, unitIn } from '../../../src/measured/mapping.ts';
import { normalise } from '../../../src/measured/normalise.ts';
import { guessSettings, readTable } from '../../../src/measured/table.ts';

const SIGNED: Omit<Mapping, 'columns'> = {
  speedSign: 'compression',
  forceSign: 'compression',
  positionSign: 'compression',
};

function read(text: string, change: Partial<Mapping> = {}) {
  const table = readTable(text, guessSettings(text));
  return normalise(table, { columns: guessColumns(table.headings), ...SIGNED, ...change });
}

const samples = (text: string, change: Partial<Mapping> = {}) => {
  const out = read(text, change);
  if (!out.ok) throw new Error(JSON.stringify(out.faults));
  return out.value;
};
const faults = (text: string, change: Partial<Mapping> = {}) => {
  const out = read(text, change);
  return out.ok ? [] : out.faults;
};

describe('columns by their headings', () => {
  it.each([
    [
      ['Shaft velocity', 'Force'],
      ['speed', 'force'],
    ],
    [
      ['Geschwindigkeit', 'Druckkraft', 'Zugkraft'],
      ['speed', 'compressionForce', 'reboundForce'],
    ],
    [
      ['Time', 'Displacement', 'Load cell'],
      ['time', 'position', 'force'],
    ],
    [
      ['Velocity', 'Compression force', 'Rebound force'],
      ['speed', 'compressionForce', 'reboundForce'],
    ],
    [
      ['Force', 'Force 2', 'Speed'],
      ['force', 'speed'],
    ],
    [['a', 'b'], []],
  ])('%j are %j', (names, wanted) => {
    expect(guessColumns(names.map((name) => ({ name, unit: '' }))).map(({ quantity }) => quantity)).toEqual(wanted);
  });

  it.each([
    ['mm/s', 'speed', 'mm/s'],
    ['mm_s', 'speed', 'mm/s'],
    ['IPS', 'speed', 'in/s'],
    ['in/sec', 'speed', 'in/s'],
    ['lbs', 'force', 'lbf'],
    ['kg', 'force', 'kgf'],
    ['N', 'force', 'N'],
    ['N', 'speed', undefined],
    ['furlong', 'position', undefined],
  ] as const)('a unit %j of %s is %s', (text, quantity, wanted) => {
    expect(unitIn(text, quantity)).toBe(wanted);
  });
});

describe('units', () => {
  // 1 in = 25.4 mm and 1 lbf = 4.4482216152605 N by definition (1959, standard gravity).
  it.each([
    ['speed [mm/s];force [N]', 0.1, 200],
    ['speed [m/s];force [N]', 100, 200],
    ['speed [in/s];force [lbf]', 2.54, 889.64432305],
    ['speed [m/s];force [kN]', 100, 200_000],
    ['speed [m/s];force [kgf]', 100, 1961.33],
  ])('of %s give SI', (header, speed, force) => {
    const { speed_m_s, force_N } = samples(`${header}\n100;200\n50;100\n-50;-100\n`);
    expect(speed_m_s?.[0]).toBeCloseTo(speed, 9);
    expect(force_N[0]).toBeCloseTo(force, 6);
  });

  it('are asked for where the file does not say them', () => {
    expect(faults('speed;force [N]\n1;2\n2;3\n3;4\n')).toMatchObject([
      { code: 'measured.unit', path: 'columns.speed', got: 'none' },
    ]);
  });
});

describe('signs', () => {
  const file = 'speed [m/s],force [N]\n';

  it.each([
    ['compression', 'compression', '0.1,200\n0.2,300\n-0.1,-150\n', [0.1, 0.2, -0.1], [200, 300, -150]],
    ['rebound', 'rebound', '-0.1,-200\n-0.2,-300\n0.1,150\n', [0.1, 0.2, -0.1], [200, 300, -150]],
    ['compression', 'rebound', '0.1,-200\n0.2,-300\n-0.1,150\n', [0.1, 0.2, -0.1], [200, 300, -150]],
    ['none', 'compression', '0.1,200\n0.2,300\n0.1,-150\n', [0.1, 0.2, -0.1], [200, 300, -150]],
    ['rebound', 'none', '-0.1,200\n-0.2,300\n0.1,150\n', [0.1, 0.2, -0.1], [200, 300, -150]],
  ] as const)('of speed %s and force %s come to compression', (speedSign, forceSign, rows, speed, force) => {
    const read = samples(file + rows, { speedSign, forceSign });
    expect(read.speed_m_s).toEqual(speed);
    expect(read.force_N).toEqual(force);
  });

  it('are wanted of one of the two', () => {
    expect(faults(`${file}1,2\n2,3\n3,4\n`, { speedSign: 'none', forceSign: 'none' })).toMatchObject([
      { code: 'measured.sign' },
    ]);
  });

  it('come from the column where each direction has its own, however it is written', () => {
    const text = 'speed [m/s],compression [N],rebound [N]\n0.1,200,-150\n0.2,300,250\n-0.3,400,350\n';
    expect(samples(text)).toEqual({
      speed_m_s: [0.1, 0.2, 0.3, -0.1, -0.2, -0.3],
      force_N: [200, 300, 400, -150, -250, -350],
    });
  });

  it('of a position that grows in extension are turned', () => {
    const text = 'time [s],position [mm],force [N]\n0,5,1\n1,6,2\n2,7,3\n';
    expect(samples(text, { positionSign: 'rebound' }).position_m).toEqual([-0.005, -0.006, -0.007]);
  });
});

describe('faults', () => {
  it('are told at line and column', () => {
    expect(faults('# run\nspeed [m/s];force [N]\n0,1;200\n0,2;high\n0,3;\n')).toEqual([
      { code: 'measured.number', path: 'line 4, column 2 (force)', got: '"high"', wanted: 'a number' },
      { code: 'measured.number', path: 'line 5, column 2 (force)', got: 'nothing', wanted: 'a number' },
    ]);
  });

  it.each([
    ['a,b\n1,2\n2,3\n3,4\n', ['measured.column.force', 'measured.column.speed']],
    ['time [s],position [mm],force [N]\n0,1,1\n0,2,2\n1,3,3\n', ['measured.time']],
    ['position [mm],compression [N],rebound [N],time [s]\n1,2,3,4\n2,3,4,5\n3,4,5,6\n', ['measured.column.speed']],
  ])('of %j are %j', (text, codes) => {
    expect(faults(text).map(({ code }) => code)).toEqual(codes);
  });

  it('end after twenty', () => {
    expect(faults(`speed [m/s],force [N]\n0.1,2\n0.1,2\n${'x,y\n'.repeat(50)}`)).toHaveLength(20);
  });
});
