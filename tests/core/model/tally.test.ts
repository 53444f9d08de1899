import { describe, expect, it } from 'vitest';
import { looseCap } from '../../../core/model/tally.ts';
import type { CasingString } from '../../../core/record/strings.ts';
import { pipe110, resolve, said } from './well.ts';

const hole = { depthReached: 30, sections: [{ from: 0, to: 30, diameter: 200 }] };
const bottom = (depth: number) => ({ by: 'bottom' as const, depth });

/** Cap, 1 m sump, 2 screens and 3 plain pipes of 3 m, each 0.10 m into the one below. */
const components: CasingString['components'] = [
  { kind: 'cap' },
  { ...pipe110, kind: 'sump', length: 1 },
  { ...pipe110, kind: 'screen', length: 3, count: 2, insertion: 0.1, slotWidth: 0.75 },
  { ...pipe110, length: 3, count: 3, insertion: 0.1, centralisers: [0.5, 2.5] },
];

const one = (string: Partial<CasingString>, rest: Parameters<typeof resolve>[0] = {}) =>
  resolve({ bore: hole, strings: [{ components, ...string }], ...rest });

describe('a tally', () => {
  it('loses one insertion at each joint and none at its foot', () => {
    // 1 + 2 × 3 + 3 × 3 = 16 m of pipe, five joints of 0.10 m: 15.50 m.
    const { strings } = one({ set: bottom(15) });
    expect(strings[0]).toMatchObject({ tallyM: 15.5, bottomM: 15, topM: -0.5, stickUpM: 0.5 });
  });

  it('places each piece from the bottom up and lists it from the top down', () => {
    // Sump 14–15; screen foot at 14 + 0.1 = 14.1, top 11.1; next foot 11.2, top 8.2;
    // plain 5.3–8.3, 2.4–5.4, −0.5–2.5.
    const { strings } = one({ set: bottom(15) });
    const places = strings[0]?.pieces.map(({ kind, topM, bottomM }) => [kind, topM, bottomM]);
    expect(places).toEqual([
      ['plain', -0.5, 2.5],
      ['plain', 2.4, 5.4],
      ['plain', 5.3, 8.3],
      ['screen', 8.2, 11.2],
      ['screen', 11.1, 14.1],
      ['sump', 14, 15],
    ]);
  });

  it('carries measures, paths and centralisers of each piece', () => {
    const { strings } = one({ set: bottom(15) });
    const pieces = strings[0]?.pieces ?? [];
    expect(pieces[2]).toMatchObject({
      path: 'strings[0].components[3]',
      insideMm: 101.6, // 110 − 2 × 4.2
      insertionM: 0.1,
      centralisersM: [5.8, 7.8], // 8.3 − 2.5 and 8.3 − 0.5
    });
    expect(pieces[3]).toMatchObject({ slotWidthMm: 0.75 });
    expect(pieces.at(-1)).toMatchObject({ insertionM: 0 });
    expect(strings[0]?.capPath).toBe('strings[0].components[0]');
  });

  it('is closed by a cap that has no length, and by one that has', () => {
    const capped = (...pieces: CasingString['components']) =>
      one({ components: [...pieces, { ...pipe110, length: 3 }], set: bottom(3) }).strings[0]!;
    const loose = capped({ kind: 'cap' });
    expect([loose.capPath, looseCap(loose)]).toEqual(Array(2).fill('strings[0].components[0]'));
    const long = capped({ kind: 'cap', length: 0.1 });
    expect([long.capPath, looseCap(long)]).toEqual(['strings[0].components[0]', undefined]);
    expect(looseCap(capped())).toBeUndefined();
  });

  it('stands by its stick-up as well as by its foot', () => {
    const { strings } = one({ set: { by: 'stickUp', height: 0.6 } });
    expect(strings[0]).toMatchObject({ topM: -0.6, bottomM: 14.9, placedBy: 'stickUp' });
  });

  it('does not deduct a joint as long as a piece, and says so', () => {
    const short: CasingString['components'] = [
      { ...pipe110, kind: 'sump', length: 0.5 },
      { ...pipe110, length: 3, insertion: 0.5 },
    ];
    const model = one({ components: short, set: bottom(3) });
    expect(model.strings[0]?.tallyM).toBe(3.5);
    expect(said(model, 'string.insertionTooLong')).toMatchObject([
      { path: 'strings[0].components[1].insertion' },
    ]);
  });

  it('leaves out a piece without length but not a cap, and says the former once', () => {
    const some: CasingString['components'] = [
      { kind: 'cap' },
      { ...pipe110, count: 2 },
      { ...pipe110, length: 3 },
    ];
    const model = one({ components: some, set: bottom(3) });
    expect(model.strings[0]?.pieces).toHaveLength(1);
    expect(said(model, 'string.noLength')).toMatchObject([
      { path: 'strings[0].components[1].length', values: { piece: 'plain', string: 1 } },
    ]);
  });

  it('takes no more pieces alike than a well can hold', () => {
    const model = one({ components: [{ ...pipe110, length: 3, count: 1e9 }], set: bottom(20) });
    expect(model.strings[0]?.pieces).toHaveLength(500);
    expect(said(model, 'string.countTooHigh')).toHaveLength(1);
  });
});

describe('where a string stands', () => {
  it('comes from the casing height at the headworks when its setting is not recorded', () => {
    const model = one({ measuredDepth: 14.7 }, { headworks: { casingAboveGround: 0.8 } });
    expect(model.strings[0]).toMatchObject({ placedBy: 'headworks', topM: -0.8, bottomM: 14.7 });
  });

  it('comes from the measured depth when there is no casing height', () => {
    const model = one({ measuredDepth: 14.7 });
    expect(model.strings[0]).toMatchObject({ placedBy: 'measured', bottomM: 14.7 });
  });

  it('is assumed on the bottom of the hole when nothing tells, and said', () => {
    const model = one({});
    expect(model.strings[0]).toMatchObject({ placedBy: 'holeBottom', bottomM: 30, topM: 14.5 });
    expect(said(model, 'string.placedAtHoleBottom')).toMatchObject([{ path: 'strings[0].set' }]);
  });

  it('is assumed from ground down for a conductor of which nothing tells', () => {
    const conductor = { components: [{ kind: 'plain' as const, length: 6, outside: 180 }] };
    const model = resolve({ bore: hole, strings: [conductor, { components, set: bottom(15) }] });
    expect(model.strings[0]).toMatchObject({ placedBy: 'ground', topM: 0, bottomM: 6 });
    expect(said(model, 'string.placedAtGround')).toMatchObject([{ path: 'strings[0].set' }]);
  });

  it('is questioned when the measured depth is more than 0.05 m from the tally', () => {
    expect(
      said(one({ set: bottom(15), measuredDepth: 15.05 }), 'string.measuredElsewhere'),
    ).toEqual([]);
    const model = one({ set: bottom(15), measuredDepth: 14.94 });
    expect(said(model, 'string.measuredElsewhere')).toMatchObject([
      { path: 'strings[0].measuredDepth', fromM: 14.94, toM: 15 },
    ]);
  });
});

describe('the casing height at the headworks', () => {
  const conductor = {
    components: [{ kind: 'plain' as const, length: 6, outside: 180 }],
    set: bottom(6),
  };
  const elsewhere = (casingAboveGround: number) =>
    said(
      resolve({
        bore: hole,
        strings: [conductor, { components, set: bottom(15) }],
        headworks: { casingAboveGround },
      }),
      'string.stickUpElsewhere',
    );

  it('is set against the last string alone, which stands 0.50 m out of the ground', () => {
    expect(elsewhere(0.47)).toEqual([]);
    expect(elsewhere(0.3)).toMatchObject([
      { path: 'headworks.casingAboveGround', values: { string: 2, measuredM: 0.3, stickUpM: 0.5 } },
    ]);
  });

  it('is not asked for where it was not measured', () => {
    expect(said(one({ set: bottom(15) }), 'string.stickUpElsewhere')).toEqual([]);
  });
});

describe('how a string fits together', () => {
  const reducer = { kind: 'reducer' as const, outside: 160, upperOutside: 110, wall: 5 };
  const lower = { kind: 'screen' as const, outside: 160, wall: 6.2, length: 3 };
  const upper = { ...pipe110, length: 6 };

  it('has nothing to say of a reducer between its two sizes', () => {
    const model = one({ components: [lower, { ...reducer, length: 0.3 }, upper], set: bottom(9) });
    expect(model.findings.filter(({ code }) => code.startsWith('string.'))).toEqual([]);
    expect(model.strings[0]?.pieces[1]).toMatchObject({
      outsideMm: 160,
      upperOutsideMm: 110,
      insideMm: 100, // the narrower end, 110 − 2 × 5
    });
  });

  it('says both ends of a reducer that stands upside down', () => {
    const turned = { ...reducer, outside: 110, upperOutside: 160, length: 0.3 };
    const model = one({ components: [lower, turned, upper], set: bottom(9) });
    // Foot of the reducer 9 − 3 = 6 m, its top 5.7 m.
    expect(said(model, 'string.reducerMisfit')).toMatchObject([
      { fromM: 5.7, values: { reducerMm: 160, neighbourMm: 110 } },
      { fromM: 6, values: { reducerMm: 110, neighbourMm: 160 } },
    ]);
  });

  it('says a change of size without a reducer', () => {
    const model = one({ components: [lower, upper], set: bottom(9) });
    expect(said(model, 'string.stepWithoutReducer')).toMatchObject([
      { fromM: 6, values: { lowerMm: 160, upperMm: 110 } },
    ]);
  });
});
