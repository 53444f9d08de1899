import { describe, expect, it } from 'vitest';
import { describe as say, describeStratum } from '../../../core/drawing/describe.ts';
import { english } from '../../../core/drawing/words/en.ts';
import type { LogInterval } from '../../../core/record/log.ts';
import { stratum } from './sample.ts';

const said = (more: Partial<LogInterval>) => say({ from: 0, to: 1, ...more }, english);

describe('the description of an interval', () => {
  it.each<[Partial<LogInterval>, string]>([
    [{ material: 'clay' }, 'CLAY'],
    [{ material: 'sand', qualifiers: [{ material: 'silt' }] }, 'silty SAND'],
    [
      { material: 'clay', qualifiers: [{ material: 'sand', degree: 'very' }], colour: 'red brown' },
      'very sandy CLAY, red brown',
    ],
    [
      { material: 'gravel', grain: 'fineToMedium', qualifiers: [{ material: 'cobbles' }] },
      'GRAVEL, fine to medium, with cobbles',
    ],
    [
      {
        material: 'granite',
        weathering: 'highly',
        fractured: true,
        moisture: 'waterBearing',
        consistency: 'weak',
      },
      'GRANITE, weak, highly weathered, fractured, water-bearing',
    ],
    [{ material: 'laterite', remarks: 'Hard to drill' }, 'LATERITE. Hard to drill'],
    [{ remarks: 'Fluid lost' }, 'Fluid lost'],
    [{}, 'not described'],
  ])('%j reads %s', (interval, words) => {
    expect(said(interval)).toBe(words);
  });

  it('is the words that somebody else wrote, untouched', () => {
    expect(said({ material: 'sand', colour: 'grey', words: 'Ckat' })).toBe('Ckat');
    expect(said({ material: 'sand', words: '' })).toBe('SAND');
  });
});

describe('the description of a stratum', () => {
  const other = (interval: Partial<LogInterval>) => ({
    interval: { from: 0, to: 1, ...interval },
    path: 'log[9]',
  });

  it('says all rows of one range, each once', () => {
    const shared = {
      ...stratum(0, 1, { material: 'clay' }),
      others: [other({ words: 'Gravel small seam' }), other({ material: 'clay' })],
    };
    expect(describeStratum(shared, english)).toBe('CLAY; Gravel small seam');
  });
});
