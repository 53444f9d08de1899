import { describe, expect, it } from 'vitest';
import { fill, ground, met, passedBy, pipe, slotted, stringOf, verdictOf } from './coveredWell.ts';

/** Two sands, from 10 to 15 m and from `footM` to 27 m, with clay between. */
const sands = (footM: number) => ({
  log: [
    ground(0, 10, 'clay'),
    ground(10, 15, 'sand'),
    ground(15, footM, 'clay'),
    ground(footM, 27, 'sand'),
  ],
});
const seal = fill(0, 3, 'cementGrout');
const longPack = { annulus: [seal, fill(3, 9, 'claySeal'), fill(9, 28, 'gravelPack')] };

describe('two aquifers joined by the annulus', () => {
  // 1 m of clay or silt: common practice.
  it('is said where pack runs through the ground that parts them', () => {
    expect(verdictOf('aquifers.joined', { ...sands(18), ...longPack }).findings).toEqual([
      {
        code: 'aquifers.joined',
        severity: 'warning',
        path: 'annulus[2]',
        fromM: 15,
        toM: 18,
        values: { fill: 'gravelPack', thicknessM: 3, limitM: 1 },
      },
    ]);
  });

  it('is said of an open annulus and of a screen as well', () => {
    const open = { annulus: [seal, fill(3, 18, 'open'), fill(18, 28, 'gravelPack')] };
    expect(verdictOf('aquifers.joined', { ...sands(18), ...open }).findings).toMatchObject([
      { path: 'annulus[1]', values: { fill: 'open' } },
    ]);
    const strings = [stringOf([pipe, 12], [slotted, 26], [pipe, 28])];
    const natural = { annulus: [seal, fill(3, 28, 'naturalCollapse')], strings };
    expect(verdictOf('aquifers.joined', { ...sands(18), ...natural }).findings).toMatchObject([
      { path: 'strings[0].components[1]', values: { fill: 'screen' } },
    ]);
  });

  it('is said of parting ground of just 1 m, and not of less', () => {
    expect(verdictOf('aquifers.joined', { ...sands(16), ...longPack }).findings).toHaveLength(1);
    expect(verdictOf('aquifers.joined', { ...sands(15.99), ...longPack })).toEqual(passedBy);
    // 16.4 − 15.4 is a little less than 1 in a double.
    const log = [
      ground(0, 15.4, 'sand'),
      ground(15.4, 16, 'clay'),
      ground(16, 16.4, 'silt'),
      ground(16.4, 27, 'sand'),
    ];
    expect(verdictOf('aquifers.joined', { log, ...longPack }).findings).toHaveLength(1);
  });

  it('is not so where clay, grout or clayey backfill stands in it', () => {
    for (const kind of ['claySeal', 'cementGrout', 'backfill'] as const) {
      const parted = [
        seal,
        fill(9, 15.5, 'gravelPack'),
        fill(15.5, 17, kind),
        fill(17, 28, 'gravelPack'),
      ];
      expect(verdictOf('aquifers.joined', { ...sands(18), annulus: parted }), kind).toEqual(met);
    }
  });

  it('is not so where the pack ends in the parting ground', () => {
    const short = { annulus: [seal, fill(3, 16, 'claySeal'), fill(16, 28, 'gravelPack')] };
    expect(verdictOf('aquifers.joined', { ...sands(18), ...short })).toEqual(met);
  });

  it('is not so where the upper ground lies dry above the rest level', () => {
    const levels = [{ reading: 15, datum: 'ground' as const, state: 'static' as const }];
    expect(verdictOf('aquifers.joined', { ...sands(18), ...longPack, levels })).toEqual(met);
  });

  it('is not so where the log calls the upper ground dry, though a rest level stands in it', () => {
    for (const moisture of ['dry', 'moist'] as const) {
      const upper = ground(10, 15, 'sand', { moisture });
      const log = [upper, ground(15, 18, 'clay'), ground(18, 27, 'sand')];
      expect(verdictOf('aquifers.joined', { log, ...longPack }), moisture).toEqual(met);
    }
  });

  it('cannot be judged without a rest level, unless the log tells where water is', () => {
    expect(verdictOf('aquifers.joined', { ...sands(18), ...longPack, levels: [] })).toMatchObject({
      findings: [],
      missing: [{ what: 'restLevel', path: 'levels' }],
    });
    const wet = { moisture: 'waterBearing' as const };
    const log = [ground(10, 15, 'sand', wet), ground(15, 18, 'clay'), ground(18, 27, 'sand', wet)];
    expect(verdictOf('aquifers.joined', { log, ...longPack, levels: [] }).findings).toHaveLength(1);
  });

  it('cannot be judged without a log, or where nobody wrote what stands there', () => {
    expect(verdictOf('aquifers.joined', { log: [], ...longPack }).missing).toEqual([
      { what: 'log', path: 'log' },
    ]);
    const annulus = [seal, fill(20, 28, 'gravelPack')];
    expect(verdictOf('aquifers.joined', { ...sands(18), annulus })).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', path: 'annulus', fromM: 15, toM: 18 }],
    });
  });

  it('is not asked of one aquifer, or of a hole given up', () => {
    expect(verdictOf('aquifers.joined')).toEqual(passedBy);
    const identity = { state: 'dry' as const };
    expect(verdictOf('aquifers.joined', { ...sands(18), ...longPack, identity })).toEqual(passedBy);
  });
});
