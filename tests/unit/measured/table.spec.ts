import { describe, expect, it } from 'vitest';
import { guessSettings, numberIn, readTable } from '../../../src/measured/table.ts';

const read = (text: string) => readTable(text, guessSettings(text));

describe('the table of a file', () => {
  it('knows a line of units that no damper needs', () => {
    const { headings } = read('No,speed,oil\n,mm/s,°C\n1,0.1,38\n2,0.2,38\n');
    expect(headings).toEqual([
      { name: 'No', unit: '' },
      { name: 'speed', unit: 'mm/s' },
      { name: 'oil', unit: '°C' },
    ]);
  });

  it.each([
    ['commas', 'speed,force\n0.1,200\n0.2,300\n', { delimiter: ',', decimalMark: '.', headerLines: 1 }],
    [
      'semicolons with decimal commas',
      'v;F\n0,1;200,5\n0,2;300,5\n',
      { delimiter: ';', decimalMark: ',', headerLines: 1 },
    ],
    [
      'semicolons with decimal points',
      'v;F\n0.1;200.5\n0.2;300\n',
      { delimiter: ';', decimalMark: '.', headerLines: 1 },
    ],
    ['tabs', 'v\tF\n0,1\t200\n0,2\t300\n', { delimiter: '\t', decimalMark: ',', headerLines: 1 }],
    ['no header', '0.1,200\n0.2,300\n', { delimiter: ',', decimalMark: '.', headerLines: 0 }],
    ['lines over the header', 'Run 12\n\nDate,3 May\nv,F\n0.1,200\n0.2,300\n', { headerLines: 4 }],
    ['a numeral in a line over the header', 'Run,7\nv,F\n0.1,200\n0.2,300\n', { headerLines: 2 }],
  ])('has its settings guessed with %s', (_, text, wanted) => {
    expect(guessSettings(text)).toMatchObject(wanted);
  });

  it('keeps the line of every row, whatever ends a line, and leaves empty lines out', () => {
    const { rows } = read('\uFEFFv;F\r\n0,1;200\r\n\r\n0,2;"300"\r\n');
    expect(rows).toEqual([
      { line: 2, cells: ['0,1', '200'] },
      { line: 4, cells: ['0,2', '300'] },
    ]);
  });

  it.each([
    [
      'Shaft speed [mm/s],Force (lbf)',
      [
        { name: 'Shaft speed', unit: 'mm/s' },
        { name: 'Force', unit: 'lbf' },
      ],
    ],
    [
      'speed_mm_s,force_N',
      [
        { name: 'speed', unit: 'mm_s' },
        { name: 'force', unit: 'N' },
      ],
    ],
    [
      'speed_peak,load',
      [
        { name: 'speed_peak', unit: '' },
        { name: 'load', unit: '' },
      ],
    ],
    [
      'speed,force\nm/s,N',
      [
        { name: 'speed', unit: 'm/s' },
        { name: 'force', unit: 'N' },
      ],
    ],
    [
      'speed,force\n[in/s],[lbf]',
      [
        { name: 'speed', unit: 'in/s' },
        { name: 'force', unit: 'lbf' },
      ],
    ],
  ])('reads names and units out of %j', (header, wanted) => {
    expect(read(`${header}\n0.1,200\n0.2,300\n`).headings).toEqual(wanted);
  });

  it.each([
    ['1.5', '.', 1.5],
    ['-1,5e3', ',', -1500],
    ['−0.4', '.', -0.4],
    ['.5', '.', 0.5],
    ['1,5', '.', Number.NaN],
    ['1.234,5', ',', Number.NaN],
    ['12 N', '.', Number.NaN],
    ['', '.', Number.NaN],
    ['0x10', '.', Number.NaN],
  ] as const)('reads %j with the decimal mark %j as %s', (cell, mark, wanted) => {
    expect(numberIn(cell, mark)).toBe(wanted);
  });
});
