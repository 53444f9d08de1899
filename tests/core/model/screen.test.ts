import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { recutForScreen, screenRange } from '../../../core/model/screen.ts';
import type { StringModel } from '../../../core/model/wellModel.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { CasingString, Component, Setting } from '../../../core/record/strings.ts';
import { fileNames, well } from '../../demo-data/wells.ts';
import { randomWell } from '../../laws/randomWell.ts';

const pipe: Component = {
  kind: 'plain',
  material: 'uPVC',
  outside: 125,
  wall: 4.8,
  length: 3,
  joint: 'glued bell',
  insertion: 0.1,
};
const slotted: Component = {
  ...pipe,
  kind: 'screen',
  slotWidth: 0.75,
  slotSpacing: 6,
  openArea: 5,
};

function stringOf(components: readonly Component[], set: Setting = { by: 'bottom', depth: 30 }) {
  return { components: [...components], set };
}

function modelOf(string: CasingString, index = 0): StringModel {
  const [model] = resolveWell({ schemaVersion: 1, strings: [string] }).strings;
  if (!model) throw new Error(`String ${index} has no pieces`);
  return model;
}

function recut(string: CasingString, fromM: number, toM: number) {
  const made = recutForScreen(string, modelOf(string), fromM, toM);
  if (!made.ok) throw new Error(`Refused: ${made.error.why}`);
  return made.value;
}

/** What stands at a depth. A joint counts to the piece below, whose bell or sleeve it is. */
function kindAt({ pieces }: StringModel, depthM: number) {
  return pieces.findLast(({ topM, bottomM }) => topM <= depthM && depthM <= bottomM)?.kind;
}

const round = (metres: number) => Math.round(metres * 1000) / 1000;

describe('a screen cut into plain pipe', () => {
  const flush = { ...pipe, insertion: 0 };

  it('parts one pipe in three that together are as long', () => {
    const { components } = recut(stringOf([flush]), 28, 29.5);
    expect(components.map(({ kind, length }) => [kind, length])).toEqual([
      ['plain', 0.5],
      ['screen', 1.5],
      ['plain', 1],
    ]);
  });

  it('leaves whole pipes below and above as they were, with their count', () => {
    const { components } = recut(stringOf([{ ...flush, count: 10 }]), 10, 11);
    expect(components.map(({ kind, count = 1, length }) => [kind, count, length])).toEqual([
      ['plain', 6, 3],
      ['plain', 1, 1],
      ['screen', 1, 1],
      ['plain', 1, 1],
      ['plain', 3, 3],
    ]);
  });

  it('tells which line of the tally each piece comes from', () => {
    expect(recut(stringOf([slotted, { ...flush, count: 2 }]), 25, 26).origins).toEqual([
      0, 1, 1, 1, 1,
    ]);
  });

  it('turns whole pipes between its ends into screen, with their joints', () => {
    const { components } = recut(stringOf([{ ...flush, count: 10 }]), 8, 19);
    expect(components.map(({ kind, count = 1, length }) => [kind, count, length])).toEqual([
      ['plain', 3, 3],
      ['plain', 1, 2],
      ['screen', 1, 1],
      ['screen', 3, 3],
      ['screen', 1, 1],
      ['plain', 1, 2],
      ['plain', 2, 3],
    ]);
    expect(components[3]).toMatchObject({ joint: 'glued bell', insertion: 0 });
    expect(components[4]).toMatchObject({ joint: 'glued bell', insertion: 0 });
    expect(components[2]).not.toHaveProperty('joint');
  });

  it('takes its measures from a screen of the string', () => {
    const { components } = recut(stringOf([slotted, { ...pipe, count: 5 }]), 20, 22);
    const made = components.filter(({ kind }) => kind === 'screen');
    expect(made.length).toBeGreaterThan(1);
    for (const one of made) expect(one).toMatchObject({ slotWidth: 0.75, openArea: 5 });
  });

  it('takes the pipe’s measures where no screen tells, and leaves its slots unknown', () => {
    const [, made] = recut(stringOf([pipe]), 28, 29.5).components;
    expect(made).toEqual({
      kind: 'screen',
      material: 'uPVC',
      outside: 125,
      wall: 4.8,
      length: 1.5,
    });
  });

  it('does not take the measures of a screen of another width', () => {
    const wide = { ...slotted, outside: 200 };
    const { components } = recut(stringOf([wide, { ...pipe, count: 2 }]), 24.5, 26);
    expect(components.filter(({ slotWidth }) => slotWidth !== undefined)).toEqual([wide]);
  });

  it('leaves screen that is there already as it is, and reaches on from it', () => {
    const { components } = recut(stringOf([slotted, { ...flush, count: 2 }]), 25, 29);
    expect(components.map(({ kind, length }) => [kind, length])).toEqual([
      ['screen', 3],
      ['screen', 2],
      ['plain', 1],
      ['plain', 3],
    ]);
    expect(components[0]).toBe(slotted);
  });

  it('keeps centralisers at their depth', () => {
    const string = stringOf([{ ...flush, centralisers: [0.4, 1.5, 3] }]);
    const after = { ...string, components: [...recut(string, 28, 29.5).components] };
    const depths = (one: CasingString) =>
      modelOf(one).pieces.flatMap(({ centralisersM }) => centralisersM);
    expect(depths(after).map(round)).toEqual(depths(string).map(round));
    expect(depths(after)).toHaveLength(3);
  });

  it('keeps remarks and what a newer program wrote on the pipe that stays', () => {
    const string = stringOf([{ ...flush, remark: 'scratched', lot: 'B' } as Component]);
    expect(recut(string, 28, 29.5).components[2]).toMatchObject({ remark: 'scratched', lot: 'B' });
  });
});

describe('a screen near a joint', () => {
  const string = stringOf([{ ...pipe, count: 4 }]);
  const joint = modelOf(string).pieces[2]!.topM;

  it('ends on the joint where it would end within it', () => {
    expect(screenRange(modelOf(string), joint + 0.05, 29).fromM).toBe(joint);
    expect(screenRange(modelOf(string), joint - 0.005, 29).fromM).toBe(joint);
    expect(screenRange(modelOf(string), joint + 0.2, 29).fromM).toBe(round(joint + 0.2));
  });

  it('may be drawn upwards as well as downwards', () => {
    expect(screenRange(modelOf(string), 29, 25)).toEqual(screenRange(modelOf(string), 25, 29));
  });

  it('ends with the string', () => {
    const { topM, bottomM } = modelOf(string);
    expect(screenRange(modelOf(string), -50, 90)).toEqual({ fromM: topM, toM: bottomM });
  });
});

describe('a screen that cannot be', () => {
  const refusal = (string: CasingString, fromM: number, toM: number) => {
    const made = recutForScreen(string, modelOf(string), fromM, toM);
    return made.ok ? undefined : made.error;
  };
  const sump: Component = { ...pipe, kind: 'sump', length: 1 };

  it('is one shorter than can be cut', () => {
    expect(refusal(stringOf([pipe]), 28, 28.05)).toEqual({ why: 'tooShort', leastM: 0.1 });
    expect(refusal(stringOf([pipe]), 40, 50)).toEqual({ why: 'tooShort', leastM: 0.1 });
  });

  it('is one where something else than plain pipe stands', () => {
    expect(refusal(stringOf([sump, pipe]), 27, 29.5)).toMatchObject({
      why: 'inTheWay',
      kind: 'sump',
      atM: { fromM: 29, toM: 30 },
    });
  });

  it('is one that is there already', () => {
    expect(refusal(stringOf([slotted]), 28, 29)).toEqual({ why: 'isScreen' });
  });
});

function holdsLaws(record: WellRecord, one: number, other: number) {
  const before = resolveWell(record).strings;
  for (const model of before) {
    const string = record.strings![model.index]!;
    const at = (share: number) => round(model.topM + share * (model.bottomM - model.topM));
    const made = recutForScreen(string, model, at(one), at(other));
    if (!made.ok) continue;
    const components = [...made.value.components];
    const strings = record.strings!.with(model.index, { ...string, components });
    const after = resolveWell({ ...record, strings }).strings.find(
      ({ index }) => index === model.index,
    )!;
    const { fromM, toM } = made.value;
    expect(after).toMatchObject({ topM: model.topM, bottomM: model.bottomM });
    expect(after.tallyM).toBe(model.tallyM);
    for (let share = 0.005; share < 1; share += 0.01) {
      const depthM = model.topM + share * (model.bottomM - model.topM);
      const near = [fromM, toM].some((end) => Math.abs(end - depthM) < 0.01);
      if (near) continue;
      const inside = depthM > fromM && depthM < toM;
      expect([depthM, kindAt(after, depthM)]).toEqual([
        depthM,
        inside ? 'screen' : kindAt(model, depthM),
      ]);
    }
    const untouched = model.pieces.filter(({ topM, bottomM }) => bottomM < fromM || topM > toM);
    for (const { topM, bottomM, kind } of untouched)
      expect(
        after.pieces.some(
          (one) => one.topM === topM && one.bottomM === bottomM && one.kind === kind,
        ),
      ).toBe(true);
  }
}

describe('a tally with a screen put in', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  it.each(fileNames)('is as long, and else as it was: %s', (name) => {
    fc.assert(
      fc.property(share, share, (one, other) => holdsLaws(well(name), one, other)),
      { numRuns: 40 },
    );
  });

  it('is as long, and else as it was, in random wells', () => {
    fc.assert(fc.property(randomWell, share, share, holdsLaws), { numRuns: 60 });
  });
});
