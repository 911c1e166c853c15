import { describe, expect, it } from 'vitest';
import { version } from '../../../../package.json';
import { proofCsv, proofJson } from '../../../../src/ui/proof/proof-export.ts';
import { judged, quantity, run } from './planted-reports.ts';

const occasion = { finished: '2026-01-02T03:04:05.000Z', browser: 'A browser', cases: 6 };

describe('results as a table', () => {
  const lines = proofCsv(run).split('\r\n');

  it('have a header, one line a quantity, and one for a case that could not be read', () => {
    expect(lines[0]).toBe(
      'case,field,kind,title,quantity,unit,expected,computed,deviation,kind of tolerance,tolerance,deviation allowed,share of tolerance,result,reason of tolerance,note',
    );
    expect(lines).toHaveLength(1 + 7 + 1 + 1);
    expect(lines.at(-1)).toBe('');
    expect(lines[1]).toBe(
      'plate/a,plate,exact,A,shim 1 clampStress,MPa,200,204,4,relative,0.08,16,0.1,within,held by the shim above,',
    );
    expect(lines[6]).toBe('gas/spoilt,gas,,,,,,,,,,,,unreadable,,half a file');
  });

  it('leave empty what was not computed, and say why', () => {
    expect(lines[7]).toBe(
      'gas/d,gas,exact,D,nothing,MPa,200,,,relative,0.08,16,,outside,held by the shim above,no root',
    );
  });

  it('keep every column in its place when a text has commas, quotes or lines', () => {
    const hostile = judged({
      title: 'One, "two"\nthree',
      quantities: [quantity({ tolerance: 'tight', note: 'a, b' })],
    });
    expect(proofCsv([hostile]).split('\r\n')[1]).toBe(
      'stack/two-shims,stack,own,"One, ""two""\nthree",shim 1 clampStress,MPa,200,204,4,absolute,0.5,16,0.25,within,two printed digits,"a, b"',
    );
  });
});

describe('results as JSON', () => {
  const read = JSON.parse(proofJson(run, occasion));

  it('say by what, where, when and how much of the whole', () => {
    expect(read).toMatchObject({
      format: 'shimwright/proof',
      version: 1,
      program: version,
      finished: occasion.finished,
      browser: 'A browser',
      casesInAll: 6,
      casesRun: 5,
    });
  });

  it('hold every report whole; a number that is none is null', () => {
    expect(read.results).toHaveLength(5);
    expect(read.results[2]).toEqual(run[2]);
    expect(read.results[3]).toEqual({ status: 'unreadable', folder: 'gas/spoilt', reason: 'half a file' });
    expect(read.results[4].failure).toBe('no root');
    expect(read.results[4].quantities[0]).toMatchObject({ deviation: null, share: null, passed: false });
  });
});
