import type { ModelFindingCode } from '../../../core/model/findings.ts';
import type { AnnulusFill } from '../../../core/record/annulus.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Component } from '../../../core/record/strings.ts';

type Chapters = Omit<WellRecord, 'schemaVersion'>;

const section = { from: 0, to: 30, diameter: 200 };
const bore = { sections: [section] };
const plain: Component = { kind: 'plain', outside: 110, wall: 4.2, length: 10.5 };
const set = { by: 'bottom' as const, depth: 10 };
const sump: Component = { ...plain, kind: 'sump', length: 2 };
const screen: Component = { ...plain, kind: 'screen', length: 3 };
const reducer: Component = { ...plain, kind: 'reducer', upperOutside: 90, length: 0.3 };

const tally = (...components: Component[]): Chapters => ({
  bore,
  strings: [{ components, set }],
});
const cased = tally(plain);
const filled = (...annulus: AnnulusFill[]): Chapters => ({ ...cased, annulus });
const gravel = (from: number, to: number, more: Partial<AnnulusFill> = {}): AnnulusFill => ({
  from,
  to,
  fill: 'gravelPack',
  ...more,
});
const sections = (...more: (typeof section)[]): Chapters => ({ bore: { sections: more } });
const logged = (...log: { from: number; to: number }[]): Chapters => ({ bore, log });
const level = (reading: number, datum: 'ground' | 'casingTop' = 'ground'): Chapters => ({
  bore,
  levels: [{ reading, datum }],
});
const pump = (values: object, string: Chapters = cased): Chapters => ({ ...string, pump: values });

const conductor = { components: [{ ...plain, outside: 180, wall: 5, length: 6.2 }] };

/** For each code a small record that calls it up. */
export const everyFinding: Record<ModelFindingCode, Chapters> = {
  'bore.reversed': sections({ from: 30, to: 0, diameter: 200 }),
  'bore.empty': sections(section, { from: 5, to: 5, diameter: 200 }),
  'bore.aboveGround': sections({ ...section, from: -1 }),
  'bore.noDiameter': sections({ ...section, diameter: 0 }),
  'bore.overlap': sections(section, { from: 4, to: 6, diameter: 250 }),
  'bore.gap': { bore: { sections: [section], depthReached: 35 } },
  'bore.diametersUnknown': { bore: { depthReached: 35 } },
  'bore.depthNotBelowGround': { bore: { sections: [section], depthReached: -30 } },
  'bore.depthAssumed': { log: [{ from: 0, to: 12 }] },
  'bore.sectionBelowDepth': { bore: { sections: [section], depthReached: 28 } },
  'bore.foundBelowDepth': { bore: { sections: [section], depthReached: 30, depthFound: 31 } },
  'sample.reversed': { samples: [{ from: 3, to: 2 }] },
  'sample.belowHole': { bore, samples: [{ from: 30, to: 31 }] },
  'log.reversed': logged({ from: 30, to: 0 }),
  'log.empty': logged({ from: 3, to: 3 }),
  'log.overlap': logged({ from: 0, to: 10 }, { from: 9, to: 30 }),
  'log.sameRange': logged({ from: 0, to: 30 }, { from: 0, to: 30 }),
  'log.gap': logged({ from: 0, to: 10 }, { from: 11, to: 30 }),
  'log.short': logged({ from: 0, to: 29 }),
  'log.aboveGround': logged({ from: -1, to: 30 }),
  'log.belowHole': logged({ from: 0, to: 31 }),
  'string.noPieces': tally(),
  'string.noLength': tally({ kind: 'plain' }),
  'string.noDiameter': tally({ kind: 'plain', length: 3 }),
  'string.noWall': tally({ kind: 'plain', length: 3, outside: 110 }),
  'string.wallTooThick': tally({ ...plain, wall: 60 }),
  'string.insideTooWide': tally({ ...plain, inside: 120 }),
  'string.sizesDisagree': tally({ ...plain, inside: 98 }),
  'string.countTooHigh': tally({ ...plain, count: 5000 }),
  'string.insertionTooLong': tally(plain, { ...plain, insertion: 11 }),
  'string.centraliserOffPiece': tally({ ...plain, centralisers: [12] }),
  'string.reducerOneSize': tally(plain, { ...plain, kind: 'reducer' }),
  'string.reducerMisfit': tally(plain, reducer, plain),
  'string.stepWithoutReducer': tally(plain, { ...plain, outside: 90 }),
  'string.placedAtHoleBottom': { bore, strings: [{ components: [plain] }] },
  'string.placedAtGround': { strings: [{ components: [plain] }] },
  'string.measuredElsewhere': { bore, strings: [{ components: [plain], set, measuredDepth: 11 }] },
  'string.stickUpElsewhere': { ...cased, headworks: { casingAboveGround: 0.3 } },
  'string.belowHole': {
    bore,
    strings: [{ components: [plain], set: { by: 'bottom', depth: 31 } }],
  },
  'string.widerThanHole': tally({ ...plain, outside: 210 }),
  'string.insideWiderThanHole': tally({ kind: 'plain', inside: 200, length: 10.5 }),
  'string.noRoomInOuter': {
    bore,
    strings: [10, 10].map((depth) => ({
      components: [{ kind: 'plain', outside: 110, length: depth }],
      set: { by: 'bottom', depth },
    })),
  },
  'string.widerThanOuter': {
    bore,
    strings: [conductor, { components: [{ ...plain, outside: 175 }], set }],
  },
  'screen.noStratum': { ...tally(screen), log: [{ from: 0, to: 9 }] },
  'screen.aboveGround': tally(plain, screen),
  'annulus.reversed': filled(gravel(10, 0)),
  'annulus.empty': filled(gravel(3, 3)),
  'annulus.aboveGround': filled(gravel(-1, 10)),
  'annulus.belowHole': filled(gravel(0, 31)),
  'annulus.noSuchString': filled(gravel(0, 10, { around: 3 })),
  'annulus.aboveString': {
    bore,
    strings: [conductor, { components: [{ ...plain, length: 7 }], set }],
    annulus: [gravel(1, 10, { around: 1 })],
  },
  'annulus.insideString': filled(gravel(0, 10, { insideHole: true })),
  'annulus.overlap': filled(gravel(4, 10), { from: 0, to: 5, fill: 'claySeal' }),
  'annulus.unrecorded': filled(gravel(4, 30)),
  'annulus.unrecordedHole': filled(gravel(0, 10)),
  'level.noStickUp': level(5, 'casingTop'),
  'level.stickUpAssumed': {
    ...level(25, 'casingTop'),
    strings: [{ components: [plain] }],
  },
  'level.aboveGround': level(-0.5),
  'level.belowHole': level(31),
  'strike.aboveGround': { bore, strikes: [{ depth: -5 }] },
  'strike.belowHole': { bore, strikes: [{ depth: 31 }] },
  'strike.riseBelow': { bore, strikes: [{ depth: 10, rise: 12 }] },
  'pump.aboveGround': pump({ intake: -5 }),
  'pump.belowHole': pump({ intake: 31 }),
  'pump.belowString': pump({ intake: 12 }, tally({ kind: 'cap' }, plain)),
  'pump.inOpenHole': pump({ intake: 12 }),
  'pump.inSump': pump({ intake: 9 }, tally(sump, plain)),
  'pump.cylinderBelowIntake': pump({ intake: 8, cylinderTop: 9 }),
  'pump.widerThanCasing': pump({ intake: 8, bodyDiameter: 102 }),
};
