import { afterEach, describe, expect, it } from 'vitest';
import { speech } from '../../../../renderer/state/language.svelte.ts';
import type { Edge, Handle } from '../../../../renderer/state/hands/handle.ts';
import { figuresOf, nameOf } from '../../../../renderer/sheet/hands/says.ts';

afterEach(() => {
  speech.language = 'en';
});

function handle(edge: Edge, depthM = 12): Handle {
  return {
    id: 'h',
    edge,
    lane: 'ground',
    depthM,
    leastM: 0,
    mostM: 50,
    roundFromM: 0,
    row: 'log[0]',
    writes: [],
  };
}

const clay = {
  path: 'log[0]',
  fromM: 10,
  toM: 12,
  is: { kind: 'layer', material: 'clay' },
} as const;
const pack = {
  path: 'annulus[1]',
  fromM: 12,
  toM: 20,
  is: { kind: 'fill', fill: 'gravelPack' },
} as const;

describe('the name of an edge', () => {
  it('says what ends there, what begins, or both, and at which depth', () => {
    const face = (edge: Edge) => nameOf(handle(edge), 12);
    expect(face({ kind: 'face', above: clay })).toBe('Foot of clay at 12.00 m');
    expect(face({ kind: 'face', below: pack })).toBe('Top of gravel pack at 12.00 m');
    expect(face({ kind: 'face', above: clay, below: pack })).toBe(
      'Boundary of clay and gravel pack at 12.00 m',
    );
  });

  it('tells levels by what the well was doing', () => {
    const level = (state?: 'static' | 'pumping') =>
      nameOf(handle({ kind: 'level', readMoreM: 0, ...(state && { state }) }), 8.5);
    expect(level('static')).toBe('Water level at rest at 8.50 m');
    expect(level('pumping')).toBe('Pumping water level at 8.50 m');
    expect(level()).toBe('Water level at 8.50 m');
  });

  it('is in the language in use, with its decimal mark', () => {
    const edge: Edge = { kind: 'intake' };
    const said = (['en', 'fr', 'pt'] as const).map((language) => {
      speech.language = language;
      return nameOf(handle(edge), 12.5);
    });
    expect(new Set(said).size).toBe(3);
    expect(said[0]).toContain('12.50 m');
    for (const one of said.slice(1)) expect(one).toContain('12,50 m');
  });
});

describe('the figures of an edge', () => {
  const both = handle({ kind: 'face', above: clay, below: pack });

  it('are the lengths of both neighbours where it would come to stand', () => {
    expect(figuresOf(both, 13.25)).toEqual(['clay 3.25 m', 'gravel pack 6.75 m']);
  });

  it('leave the part as long as it is that does not move along', () => {
    expect(figuresOf(both, 11, true)).toEqual(['clay 1.00 m', 'gravel pack 8.00 m']);
    expect(figuresOf(both, 13, true)).toEqual(['clay 2.00 m', 'gravel pack 7.00 m']);
  });

  it('are the reading where the tape was held to the casing top', () => {
    const level = (readMoreM: number) => figuresOf(handle({ kind: 'level', readMoreM }), 8);
    expect(level(0.45)).toEqual(['reading 8.45 m']);
    expect(level(0)).toEqual([]);
  });

  it('are foot and stick-up of a string, whichever end is held', () => {
    const string = (end: 'top' | 'foot', depthM: number) =>
      figuresOf(handle({ kind: 'string', end, label: 1, tallyM: 30 }), depthM);
    expect(string('foot', 29.5)).toEqual(['foot 29.50 m', 'stick-up 0.50 m']);
    expect(string('top', -0.5)).toEqual(['foot 29.50 m', 'stick-up 0.50 m']);
  });
});
