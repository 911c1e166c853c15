import { describe, expect, it } from 'vitest';
import { parseTrace } from '../../../../src/solver/cycle/trace.ts';
import { InputError } from '../../../../src/units/fault.ts';

const faultOf = (text: string) => {
  try {
    parseTrace(text, 0.1);
  } catch (error) {
    if (error instanceof InputError) return error.fault;
  }
  return undefined;
};

const read = (text: string) => {
  const { time_s, position_m } = parseTrace(text, 0.1);
  return [Array.from(time_s), Array.from(position_m)];
};

describe('parseTrace', () => {
  it.each([
    ['commas', 'time_s,position_mm\n0,10\n0.5,40\n'],
    ['semicolons and decimal commas', 'time_s;position_mm\n0;10\n0,5;40'],
    ['tabs, quotes, other columns, another order', '"lap"\t"position_mm"\t"time_s"\n1\t10\t0\n1\t40\t0.5'],
    ['a mark before it, Windows ends, empty lines', '\uFEFF\r\ntime_s, position_mm\r\n\r\n0, 10\r\n0.5, 40\r\n\r\n'],
    ['milliseconds and metres', 'time_ms,position_m\n0,0.01\n500,0.04'],
  ])('reads %s', (_, text) => {
    expect(read(text)).toEqual([
      [0, 0.5],
      [0.01, 0.04],
    ]);
  });

  it('reads inches', () => {
    expect(read('time_s,position_in\n0,1\n1,0')[1]).toEqual([0.0254, 0]);
  });

  it.each([
    ['time_s,position\n0,1\n1,2', 'header', 'trace, header'],
    ['t;position_mm\n0;1\n1;2', 'header', 'trace, header'],
    ['', 'header', 'trace, header'],
    ['time_s,position_mm\n0,1', 'short', 'trace'],
    ['time_s,position_mm\n0,1\n1,two', 'number', 'trace, line 3, position_mm'],
    ['time_s,position_mm\n0,1\n\n1', 'number', 'trace, line 4, position_mm'],
    ['time_s,position_mm\n0,1\n,2', 'number', 'trace, line 3, time_s'],
    ['time_s,position_mm\n0,1\n1e999,2', 'number', 'trace, line 3, time_s'],
    ['time_s,position_mm\n0,1\n0.5,2\n0.5,3', 'time', 'trace, line 4, time_s'],
    ['time_s,position_mm\n0,1\n0.5,101', 'travel', 'trace, line 3, position_mm'],
    ['time_s,position_mm\n0,-0.1\n0.5,1', 'travel', 'trace, line 2, position_mm'],
  ])('refuses %j and says where', (text, code, path) => {
    expect(faultOf(text)).toMatchObject({ code: `cycle.trace.${code}`, path });
  });

  // The travel is 100 mm: 3.93700787 in.
  it.each([
    ['time_s,position_mm\n0,1\n0.5,101', '101', 'from 0 to the travel, 100', 'mm'],
    ['time_s,position_in\n0,1\n0.5,4', '4', 'from 0 to the travel, 3.93700787', 'in'],
    ['time_ms,position_mm\n20,1\n10,2', '10', 'more than 20', 'ms'],
  ])('tells %j in the units of its columns', (text, got, wanted, unit) => {
    expect(faultOf(text)).toMatchObject({ got, wanted, unit });
  });
});
