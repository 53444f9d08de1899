import { describe, expect, it } from 'vitest';
import { fill, ground, met, passedBy, pipe, slotted, stringOf, verdictOf } from './coveredWell.ts';

const two = {
  log: [
    ground(0, 8, 'clay'),
    ground(8, 14, 'sand'),
    ground(14, 19, 'clay'),
    ground(19, 27, 'sand'),
  ],
  strings: [stringOf([pipe, 10], [slotted, 13], [pipe, 20], [slotted, 26], [pipe, 28])],
  annulus: [
    fill(0, 3, 'cementGrout'),
    fill(3, 8, 'claySeal'),
    fill(8, 14, 'gravelPack'),
    fill(14, 18, 'claySeal'),
    fill(18, 28, 'gravelPack'),
  ],
  levels: [{ reading: 6, datum: 'ground' as const, state: 'static' as const }],
};

describe('two aquifers joined by the casing', () => {
  it('is said where a string has screens in both, however well the annulus is closed', () => {
    expect(verdictOf('aquifers.joined', two)).toEqual(met);
    expect(verdictOf('aquifers.screened', two).findings).toEqual([
      {
        code: 'aquifers.screened',
        severity: 'warning',
        path: 'strings[0]',
        fromM: 14,
        toM: 19,
        values: { string: 1, thicknessM: 5, limitM: 1 },
      },
    ]);
  });

  it('is left to aquifers.joined where one pack runs through both', () => {
    const annulus = [fill(0, 3, 'cementGrout'), fill(8, 28, 'gravelPack')];
    expect(verdictOf('aquifers.joined', { ...two, annulus }).findings).toHaveLength(1);
    expect(verdictOf('aquifers.screened', { ...two, annulus })).toEqual(met);
  });

  it('is so at 1 m of parting ground and not at less', () => {
    const parted = (thickM: number) => [
      ground(0, 14, 'sand'),
      ground(14, 14 + thickM, 'clay'),
      ground(14 + thickM, 27, 'sand'),
    ];
    expect(verdictOf('aquifers.screened', { ...two, log: parted(1) }).findings).toHaveLength(1);
    expect(verdictOf('aquifers.screened', { ...two, log: parted(0.9) })).toEqual(met);
  });

  it('is not so where the upper screen stands dry', () => {
    const levels = [{ reading: 16, datum: 'ground' as const, state: 'static' as const }];
    expect(verdictOf('aquifers.screened', { ...two, levels })).toEqual(met);
  });

  it('cannot be judged without log or rest level', () => {
    expect(verdictOf('aquifers.screened', { ...two, log: [] }).missing).toEqual([
      { what: 'log', path: 'log' },
    ]);
    expect(verdictOf('aquifers.screened', { ...two, levels: [] })).toMatchObject({
      findings: [],
      missing: [{ what: 'restLevel', path: 'levels' }],
    });
  });

  it('is not asked of a string with one screen, if of two pieces, or of a hole given up', () => {
    expect(verdictOf('aquifers.screened')).toEqual(passedBy);
    const strings = [stringOf([pipe, 20], [slotted, 23], [slotted, 26], [pipe, 28])];
    expect(verdictOf('aquifers.screened', { strings })).toEqual(passedBy);
    expect(verdictOf('aquifers.screened', { ...two, identity: { state: 'dry' } })).toEqual(
      passedBy,
    );
  });
});
