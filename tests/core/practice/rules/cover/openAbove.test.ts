import { describe, expect, it } from 'vitest';
import {
  fill,
  filled,
  ground,
  met,
  passedBy,
  pipe,
  slotted,
  stringOf,
  verdictOf,
} from './coveredWell.ts';

const seal = fill(0, 3, 'cementGrout');
const clay = fill(16, 18, 'claySeal');
const pack = fill(18, 28, 'gravelPack');

describe('an annulus recorded as open', () => {
  it('is to be looked at where it leads down to the screen', () => {
    expect(verdictOf('open.above', filled(seal, fill(3, 18, 'open'), pack)).findings).toEqual([
      {
        code: 'open.above',
        severity: 'warning',
        path: 'annulus[1]',
        fromM: 3,
        toM: 18,
        values: {},
      },
    ]);
  });

  it('is worth a note in rock, and above 2 m of clay on the pack', () => {
    const rock = { log: [ground(0, 3, 'clay'), ground(3, 28, 'granite')] };
    const open = filled(seal, fill(3, 18, 'open'), pack);
    expect(verdictOf('open.above', { ...open, ...rock }).findings).toMatchObject([
      { severity: 'note' },
    ]);
    const parted = filled(seal, fill(3, 16, 'open'), clay, pack);
    expect(verdictOf('open.above', parted).findings).toMatchObject([{ severity: 'note' }]);
    const thin = filled(seal, fill(3, 16.1, 'open'), fill(16.1, 18, 'claySeal'), pack);
    expect(verdictOf('open.above', thin).findings).toMatchObject([{ severity: 'warning' }]);
  });

  it('is not closed off by clay that lies below the next screen only', () => {
    const strings = [stringOf([pipe, 10], [slotted, 12], [pipe, 20], [slotted, 26], [pipe, 28])];
    const annulus = [seal, fill(3, 9, 'open'), fill(9, 13, 'gravelPack'), fill(13, 18, 'claySeal')];
    expect(verdictOf('open.above', { strings, annulus }).findings).toMatchObject([
      { severity: 'warning', fromM: 3, toM: 9 },
    ]);
  });

  it('is left to the rules on the seal and on the pack in their depths', () => {
    expect(
      verdictOf('open.above', filled(fill(0, 3, 'open'), fill(3, 18, 'backfill'), pack)),
    ).toEqual(met);
    expect(verdictOf('open.above', filled(seal, clay, fill(20, 28, 'open')))).toEqual(met);
  });

  it('is looked at between two screens, not beside them', () => {
    const strings = [stringOf([pipe, 10], [slotted, 12], [pipe, 20], [slotted, 26], [pipe, 28])];
    const annulus = [seal, fill(3, 10, 'backfill'), fill(10, 28, 'open')];
    expect(verdictOf('open.above', { strings, annulus }).findings).toMatchObject([
      { fromM: 12, toM: 20 },
    ]);
  });

  it('is looked at down to the foot of the pipes where no screen is', () => {
    const strings = [stringOf([pipe, 12])];
    const annulus = [seal, fill(3, 12, 'open')];
    expect(verdictOf('open.above', { strings, annulus }).findings).toMatchObject([
      { fromM: 3, toM: 12 },
    ]);
  });

  it('may stand inside a surface casing that is grouted outside', () => {
    const surface = stringOf([{ ...pipe, outside: 160, wall: 5 }, 17]);
    const strings = [surface, stringOf([pipe, 20], [slotted, 26], [pipe, 28])];
    const annulus = [
      fill(0, 17, 'cementGrout', { around: 0 }),
      fill(0, 17, 'open', { around: 1 }),
      fill(17, 28, 'gravelPack', { around: 1 }),
    ];
    expect(verdictOf('open.above', { strings, annulus })).toEqual(met);
  });

  it('cannot be judged without fills; what nobody wrote of the model says', () => {
    expect(verdictOf('open.above', { annulus: [] }).missing).toEqual([
      { what: 'fills', path: 'annulus' },
    ]);
    expect(verdictOf('open.above', filled(seal, pack))).toEqual(met);
  });

  it('is not asked of a hole given up', () => {
    const open = filled(seal, fill(3, 18, 'open'), pack);
    expect(verdictOf('open.above', { ...open, identity: { state: 'dry' } })).toEqual(passedBy);
  });
});
