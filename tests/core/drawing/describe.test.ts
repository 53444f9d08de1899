import { describe, expect, it } from 'vitest';
import { describe as say, describeStratum } from '../../../core/drawing/describe.ts';
import { english } from '../../../core/drawing/words/en.ts';
import { french } from '../../../core/drawing/words/fr.ts';
import { portuguese } from '../../../core/drawing/words/pt.ts';
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

describe('the description of an interval in another language', () => {
  // From memory: adjectives follow their noun in French and Portuguese and agree with it.
  it.each<[Partial<LogInterval>, string, string]>([
    [{ material: 'clay' }, 'ARGILE', 'ARGILA'],
    [
      { material: 'clay', qualifiers: [{ material: 'sand', degree: 'very' }], moisture: 'dry' },
      'ARGILE très sableuse, sèche',
      'ARGILA muito arenosa, seca',
    ],
    [
      { material: 'silt', qualifiers: [{ material: 'sand', degree: 'slightly' }] },
      'LIMON légèrement sableux',
      'SILTE ligeiramente arenoso',
    ],
    [
      { material: 'sand', grain: 'mediumToCoarse', moisture: 'waterBearing' },
      'SABLE, moyen à grossier, aquifère',
      'AREIA, média a grossa, aquífera',
    ],
    [
      {
        material: 'clay',
        qualifiers: [{ material: 'silt' }, { material: 'sand' }, { material: 'cobbles' }],
      },
      'ARGILE limoneuse, sableuse, avec galets',
      'ARGILA siltosa, arenosa, com calhaus',
    ],
    [
      { material: 'boulders', weathering: 'slightly', fractured: true },
      'BLOCS, peu altérés, fracturés',
      'BLOCOS, pouco alterados, fraturados',
    ],
    [
      { material: 'sand', qualifiers: [{ material: 'cobbles', degree: 'slightly' }] },
      'SABLE, avec galets en faible proportion',
      'AREIA, com calhaus em pequena proporção',
    ],
    [{ material: 'sandstone', colour: 'rouge' }, 'GRÈS, rouge', 'ARENITO, rouge'],
    [{ moisture: 'wet' }, 'mouillé', 'molhado'],
    [{}, 'sans description', 'sem descrição'],
  ])('%j', (interval, inFrench, inPortuguese) => {
    expect(say({ from: 0, to: 1, ...interval }, french)).toBe(inFrench);
    expect(say({ from: 0, to: 1, ...interval }, portuguese)).toBe(inPortuguese);
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
