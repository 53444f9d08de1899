import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { deepFreeze } from '../../../../core/record/freeze.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { dragged } from '../../../../renderer/state/hands/dragged.ts';
import { findHandle, type Handle } from '../../../../renderer/state/hands/handle.ts';
import { handlesOf } from '../../../../renderer/state/hands/handlesOf.ts';

const recordOf = (parts: Partial<WellRecord>): WellRecord =>
  deepFreeze({ schemaVersion: 1, ...parts });

function edges(record: WellRecord): Handle[] {
  return handlesOf(record, resolveWell(record));
}

function edge(record: WellRecord, id: string): Handle {
  const found = findHandle(edges(record), id);
  if (!found)
    throw new Error(
      `No edge ${id} among ${edges(record)
        .map((one) => one.id)
        .join()}`,
    );
  return found;
}

function moved(record: WellRecord, id: string, toM: number, apart = false): WellRecord {
  return dragged({ record, typed: {} }, edge(record, id), toM, apart).record;
}

const pipe = { kind: 'plain', length: 3, outside: 125, wall: 4.8 } as const;

describe('the edges of the log', () => {
  const record = recordOf({
    log: [
      { from: 0, to: 2, material: 'topsoil' },
      { from: 2, to: 6, material: 'clay' },
      { from: 7, to: 9, material: 'sand' },
    ],
  });

  it('are one where two layers meet, and move both', () => {
    expect(moved(record, 'log[0].to', 2.5).log).toMatchObject([
      { from: 0, to: 2.5 },
      { from: 2.5, to: 6 },
      { from: 7, to: 9 },
    ]);
  });

  it('are two at a gap, of which only the one that is held moves', () => {
    expect(moved(record, 'log[1].to', 6.4).log?.[1]).toMatchObject({ from: 2, to: 6.4 });
    expect(moved(record, 'log[1].to', 6.4).log?.[2]).toMatchObject({ from: 7, to: 9 });
    expect(moved(record, 'log[2].from', 6.4).log?.[1]).toMatchObject({ from: 2, to: 6 });
  });

  it('close a gap and go no further', () => {
    expect(edge(record, 'log[1].to')).toMatchObject({ leastM: 2.01, mostM: 7 });
    expect(edge(record, 'log[2].from')).toMatchObject({ leastM: 6, mostM: 8.99 });
  });

  it('are two at an overlap, of which only the one that is held moves', () => {
    const lapped = recordOf({
      log: [
        { from: 0, to: 5 },
        { from: 4, to: 9 },
      ],
    });
    expect(moved(lapped, 'log[0].to', 4.5).log).toEqual([
      { from: 0, to: 4.5 },
      { from: 4, to: 9 },
    ]);
    expect(moved(lapped, 'log[1].from', 4.5).log).toEqual([
      { from: 0, to: 5 },
      { from: 4.5, to: 9 },
    ]);
  });

  it('leave each layer a centimetre', () => {
    expect(edge(record, 'log[0].to')).toMatchObject({ leastM: 0.01, mostM: 5.99 });
  });

  it('open a gap and never an overlap when one part is moved alone', () => {
    expect(moved(record, 'log[0].to', 1.5, true).log).toMatchObject([
      { from: 0, to: 1.5 },
      { from: 2, to: 6 },
      {},
    ]);
    expect(moved(record, 'log[0].to', 2.5, true).log).toMatchObject([
      { from: 0, to: 2 },
      { from: 2.5, to: 6 },
      {},
    ]);
  });

  it('are those of what was written the wrong way round, as it is drawn', () => {
    const reversed = recordOf({ log: [{ from: 5, to: 1 }] });
    expect(moved(reversed, 'log[0].to', 2).log).toEqual([{ from: 5, to: 2 }]);
  });

  it('are none of a row without thickness', () => {
    expect(edges(recordOf({ log: [{ from: 5, to: 5 }] }))).toEqual([]);
  });

  it('forget what was typed and could not be read there', () => {
    const typed = { 'log[0].to': '2x', 'log[1].colour': 'red' };
    const next = dragged({ record, typed }, edge(record, 'log[0].to'), 2.2);
    expect(next.typed).toEqual({ 'log[1].colour': 'red' });
  });
});

describe('the faces of fills', () => {
  const record = recordOf({
    bore: { sections: [{ from: 0, to: 30, diameter: 200 }] },
    strings: [{ components: [{ ...pipe, count: 10 }], set: { by: 'bottom', depth: 30 } }],
    annulus: [
      { from: 0, to: 5, fill: 'cementGrout' },
      { from: 5, to: 8, fill: 'claySeal' },
      { from: 8, to: 30, fill: 'gravelPack', sacks: 12 },
    ],
  });

  it('move with the neighbour that shares them, and keep the rest of their rows', () => {
    expect(moved(record, 'annulus[1].to', 9.25).annulus).toEqual([
      { from: 0, to: 5, fill: 'cementGrout' },
      { from: 5, to: 9.25, fill: 'claySeal' },
      { from: 9.25, to: 30, fill: 'gravelPack', sacks: 12 },
    ]);
  });

  it('tell between which diameters they stand', () => {
    expect(edge(record, 'annulus[1].to').ringMm).toEqual({ inner: 125, outer: 200 });
  });

  it('are shared with what stands in the bare hole under the string', () => {
    const bare = recordOf({
      ...record,
      strings: [{ components: [{ ...pipe, count: 9 }], set: { by: 'bottom', depth: 27 } }],
      annulus: [
        { from: 8, to: 28, fill: 'gravelPack' },
        { from: 28, to: 30, fill: 'naturalCollapse', insideHole: true },
      ],
    });
    expect(moved(bare, 'annulus[0].to', 28.5).annulus).toMatchObject([
      { to: 28.5 },
      { from: 28.5 },
    ]);
  });

  it('are not shared by fills in a casing and round it', () => {
    const filled = recordOf({
      ...record,
      annulus: [
        { from: 5, to: 8, fill: 'claySeal' },
        { from: 0, to: 8, fill: 'cementGrout', insideHole: true },
      ],
    });
    expect(moved(filled, 'annulus[0].to', 9).annulus?.[1]).toMatchObject({ to: 8 });
  });

  it('are not shared by fills round different strings', () => {
    const two = recordOf({
      ...record,
      annulus: [
        { from: 0, to: 5, fill: 'cementGrout', around: 0 },
        { from: 5, to: 8, fill: 'claySeal', around: 1 },
      ],
    });
    expect(moved(two, 'annulus[0].to', 6).annulus?.[1]).toMatchObject({ from: 5 });
  });
});

describe('the edges of the hole', () => {
  it('take the depth reached along with the foot of the last section', () => {
    const record = recordOf({
      bore: {
        sections: [
          { from: 0, to: 6, diameter: 250 },
          { from: 6, to: 30, diameter: 165 },
        ],
        depthReached: 30,
      },
    });
    expect(moved(record, 'bore.sections[1].to', 31).bore).toMatchObject({
      sections: [{ to: 6 }, { to: 31 }],
      depthReached: 31,
    });
    expect(moved(record, 'bore.sections[1].to', 29, true).bore?.depthReached).toBe(30);
    expect(moved(record, 'bore.sections[0].to', 7).bore?.sections).toMatchObject([
      { to: 7 },
      { from: 7 },
    ]);
  });

  it('are the depth reached alone where no section ends there', () => {
    const record = recordOf({ bore: { depthReached: 30 } });
    expect(edge(record, 'bore.depthReached').edge.kind).toBe('holeFoot');
    expect(moved(record, 'bore.depthReached', 28.5).bore).toEqual({ depthReached: 28.5 });
  });
});

describe('water levels', () => {
  const strings = [
    {
      components: [{ ...pipe, count: 10 }],
      set: { by: 'stickUp' as const, height: 0.45 },
    },
  ];

  it('write what the tape reads from the casing top', () => {
    const record = recordOf({
      strings,
      levels: [{ reading: 8.45, datum: 'casingTop', state: 'static' }],
    });
    expect(edge(record, 'levels[0].reading').depthM).toBe(8);
    expect(moved(record, 'levels[0].reading', 7.5).levels).toEqual([
      { reading: 7.95, datum: 'casingTop', state: 'static' },
    ]);
  });

  it('write the depth where the tape was held to the ground', () => {
    const record = recordOf({ strings, levels: [{ reading: 8.45, datum: 'ground' }] });
    expect(moved(record, 'levels[0].reading', 7.5).levels?.[0]?.reading).toBe(7.5);
  });

  it('are those that are drawn, and the one that is held', () => {
    const levels = [
      { reading: 12, datum: 'ground' as const, state: 'pumping' as const },
      { reading: 11, datum: 'ground' as const, state: 'pumping' as const },
    ];
    const record = recordOf({ levels });
    const ids = (held?: string) => handlesOf(record, resolveWell(record), held).map(({ id }) => id);
    expect(ids()).toEqual(['levels[0].reading']);
    expect(ids('levels[1].reading')).toEqual(['levels[1].reading', 'levels[0].reading']);
  });
});

describe('strikes and the pump', () => {
  it('write the depth and the rise of a strike by themselves', () => {
    const record = recordOf({ strikes: [{ depth: 14, rise: 6 }] });
    expect(moved(record, 'strikes[0].depth', 15).strikes).toEqual([{ depth: 15, rise: 6 }]);
    expect(moved(record, 'strikes[0].rise', 5).strikes).toEqual([{ depth: 14, rise: 5 }]);
    expect(edge(record, 'strikes[0].rise').mostM).toBe(14);
  });

  it('move the pump as one stiff body, or its intake alone', () => {
    const record = recordOf({ pump: { intake: 24, cylinderTop: 22.8 } });
    expect(moved(record, 'pump.intake', 27).pump).toEqual({ intake: 27, cylinderTop: 25.8 });
    expect(moved(record, 'pump.intake', 27, true).pump).toEqual({ intake: 27, cylinderTop: 22.8 });
    expect(moved(record, 'pump.cylinderTop', 22).pump).toEqual({ intake: 24, cylinderTop: 22 });
  });
});

describe('a string', () => {
  const components = [{ ...pipe, count: 10 }];

  it('set by its foot is moved by its foot’s depth, whichever end is held', () => {
    const record = recordOf({ strings: [{ components, set: { by: 'bottom', depth: 29.5 } }] });
    const set = (next: WellRecord) => next.strings?.[0]?.set;
    expect(set(moved(record, 'strings[0] foot', 29.8))).toEqual({ by: 'bottom', depth: 29.8 });
    expect(set(moved(record, 'strings[0] top', -0.3))).toEqual({ by: 'bottom', depth: 29.7 });
  });

  it('set by its stick-up is moved by its stick-up, whichever end is held', () => {
    const record = recordOf({ strings: [{ components, set: { by: 'stickUp', height: 0.5 } }] });
    const set = (next: WellRecord) => next.strings?.[0]?.set;
    expect(set(moved(record, 'strings[0] foot', 29.8))).toEqual({ by: 'stickUp', height: 0.2 });
    expect(set(moved(record, 'strings[0] top', -0.3))).toEqual({ by: 'stickUp', height: 0.3 });
  });

  it('of which nothing told where it stands gets its foot’s depth', () => {
    const record = recordOf({ bore: { depthReached: 32 }, strings: [{ components }] });
    expect(edge(record, 'strings[0] foot').depthM).toBe(32);
    expect(moved(record, 'strings[0] foot', 31).strings?.[0]?.set).toEqual({
      by: 'bottom',
      depth: 31,
    });
  });

  it('stands no deeper than the hole when it is dragged', () => {
    const record = recordOf({
      bore: { depthReached: 32 },
      strings: [{ components, set: { by: 'bottom', depth: 30 } }],
    });
    expect(edge(record, 'strings[0] foot').mostM).toBe(32);
    expect(edge(record, 'strings[0] top').mostM).toBe(2);
  });

  it('has joints that can be chosen and write nothing', () => {
    const record = recordOf({ strings: [{ components, set: { by: 'bottom', depth: 30 } }] });
    const joints = edges(record).filter((one) => one.edge.kind === 'joint');
    expect(joints.map(({ depthM }) => depthM)).toEqual([3, 6, 9, 12, 15, 18, 21, 24, 27]);
    for (const joint of joints) expect(joint).toMatchObject({ writes: [] });
    expect(joints[0]).toMatchObject({ row: 'strings[0].components[0]' });
  });
});
