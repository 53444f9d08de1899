import { expect, test } from 'vitest';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { wellRecord } from '../../core/record/schema.ts';
import { fileNames, well } from './wells.ts';

test('the ordinary well is drilled by hand and carries every chapter but photos and explanations', () => {
  const record = well('hand-drilled-32m.json');
  expect(record.bore?.method).toBe('rotaryJetting');
  const absent = Object.keys(wellRecord.shape).filter((chapter) => !(chapter in record));
  expect(absent).toEqual(['photos', 'explanations']);
  expect(record.tests?.map(({ kind }) => kind)).toEqual(['step', 'constantRate', 'recovery']);
});

test('the two screens are parted by a clay seal against the clay between the sands', () => {
  const { strings, annulus, strata } = resolveWell(well('two-screens-58m.json'));
  const screens = strings[0]?.pieces.filter(({ kind }) => kind === 'screen') ?? [];
  const foot = screens.find((piece, at) => (screens[at + 1]?.topM ?? 0) > piece.bottomM + 1);
  const lower = screens.find(({ topM }) => topM > (foot?.bottomM ?? Infinity));
  const seals = annulus.filter(
    ({ fill, fromM, toM }) =>
      fill === 'claySeal' &&
      fromM > (foot?.bottomM ?? Infinity) &&
      toM < (lower?.topM ?? -Infinity),
  );
  expect(seals.length).toBeGreaterThan(0);
  for (const seal of seals)
    expect(
      strata.some(
        ({ interval, fromM, toM }) =>
          interval.material === 'clay' && fromM < seal.toM && toM > seal.fromM,
      ),
    ).toBe(true);
});

test('the shallow well has a direct action pump', () => {
  const record = well('shallow-direct-action-9m.json');
  expect(record.pump?.kind).toBe('directAction');
  expect(resolveWell(record).strings[0]?.bottomM).toBeCloseTo(9, 6);
});

test('the telescoped well has a grouted surface casing, a reducer, and is 120 m deep', () => {
  const record = well('telescoped-in-granite.json');
  const model = resolveWell(record);
  expect(model.strings).toHaveLength(2);
  expect(model.strings[1]?.pieces.some(({ kind }) => kind === 'reducer')).toBe(true);
  const grout = model.annulus.find(({ fill, around }) => fill === 'cementGrout' && around === 0);
  expect(grout?.toM).toBeCloseTo(model.strings[0]?.bottomM ?? NaN, 6);
  expect(model.bore.depthM).toBeCloseTo(120, 6);
  expect(record.pump?.kind).toBe('solarSubmersible');
});

test('the dry hole struck no water, holds no casing and is filled from ground to foot', () => {
  const record = well('dry-hole-26m.json');
  expect(record.identity?.state).toBe('dry');
  expect([record.strikes, record.strings]).toEqual([undefined, undefined]);
  expect(record.annulus?.every(({ insideHole }) => insideHole)).toBe(true);
});

test('the collapsed hole keeps a casing that ends below ground, sealed over', () => {
  const record = well('collapsed-hole-38m.json');
  const model = resolveWell(record);
  expect(record.identity?.state).toBe('abandonedAndSealed');
  expect(model.strings[0]?.topM).toBeCloseTo(9.4, 6);
  const over = model.annulus.find(({ toM }) => Math.abs(toM - 9.4) < 1e-6);
  expect(over?.fill).toBe('cementGrout');
  expect(model.annulus.some(({ fill }) => fill === 'naturalCollapse')).toBe(true);
});

test('the well laid out has a completion, and nothing poured, tested or signed', () => {
  const record = well('laid-out-45m.json');
  expect(record.identity?.state).toBe('laidOut');
  expect(record.strings).toHaveLength(1);
  expect(record.annulus?.flatMap(({ sacks, litres }) => sacks ?? litres ?? [])).toEqual([]);
  expect([record.tests, record.quality, record.pump, record.marks]).toEqual(
    Array(4).fill(undefined),
  );
});

test('one log has sixty intervals within 60 m', () => {
  const log = well('sixty-intervals-58m.json').log ?? [];
  expect(log).toHaveLength(60);
  expect(log.at(-1)?.to).toBeLessThanOrEqual(60);
});

test('supervisors, contractors and dates vary over the programme', () => {
  const wells = fileNames.map(well);
  expect(new Set(wells.map(({ identity }) => identity?.supervisor)).size).toBe(3);
  expect(new Set(wells.map(({ identity }) => identity?.contractor)).size).toBe(4);
  expect(new Set(wells.map(({ bore }) => bore?.startedOn?.slice(0, 4)))).toEqual(
    new Set(['2025', '2026']),
  );
});
