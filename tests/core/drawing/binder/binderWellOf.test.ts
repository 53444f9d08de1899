import { expect, it } from 'vitest';
import { binderWellOf } from '../../../../core/drawing/binder/binderWellOf.ts';
import { well } from '../../../demo-data/wells.ts';

const changedAt = '2026-01-31T12:00:00+00:00';

function told(name: string) {
  return binderWellOf(well(name), { id: 'a', revision: 4, changedAt });
}

it('tells what lists, maps and tables need of a well', () => {
  const record = well('hand-drilled-32m.json');
  const one = told('hand-drilled-32m.json');
  expect(one).toMatchObject({
    id: 'a',
    revision: 4,
    changedAt,
    number: record.identity?.number,
    village: record.site?.village,
    position: [record.site?.longitude, record.site?.latitude],
    drilledM: 32.6,
    outcome: 'water',
  });
  expect(one.screens.length).toBeGreaterThan(0);
  expect(one.screens.every(({ fromM, toM }) => fromM < toM)).toBe(true);
  expect(one.layers.map(({ fromM }) => fromM)).toEqual(record.log?.map(({ from }) => from));
});

it('is plain JSON', () => {
  const one = told('two-screens-58m.json');
  expect(JSON.parse(JSON.stringify(one))).toEqual(one);
});

it('counts a dry hole as dry, and one that is only laid out as open', () => {
  expect(told('dry-hole-26m.json').outcome).toBe('dry');
  expect(told('laid-out-45m.json').outcome).toBe('open');
});

it('takes screens that follow each other as one', () => {
  const screens = told('two-screens-58m.json').screens;
  expect(screens).toHaveLength(2);
  expect(screens[0]!.toM).toBeLessThan(screens[1]!.fromM);
});

it('names the material along most of the screens, and of most of the log', () => {
  const one = binderWellOf(
    {
      schemaVersion: 1,
      log: [
        { from: 0, to: 12, material: 'clay' },
        { from: 12, to: 16, material: 'sand' },
        { from: 16, to: 18, material: 'gravel' },
      ],
      strings: [
        {
          components: [
            { kind: 'screen', length: 5, outside: 110 },
            { kind: 'plain', length: 13.5, outside: 110 },
          ],
          set: { by: 'bottom', depth: 18 },
        },
      ],
    },
    { id: 'b', changedAt },
  );
  expect(one.aquifer).toBe('sand');
  expect(one.geology).toBe('clay');
});

it('takes the rate of the last constant-rate test where no safe rate can be told', () => {
  const one = binderWellOf(
    {
      schemaVersion: 1,
      tests: [{ kind: 'constantRate', rate: 1.2 }],
      pump: { rate: 0.9 },
    },
    { id: 'b', changedAt },
  );
  expect(one.yield).toEqual({ m3h: 1.2, basis: 'tested' });
});

it('keeps the results of samples beside the values of the set, in its unit', () => {
  const one = binderWellOf(
    {
      schemaVersion: 1,
      quality: [{ results: [{ parameter: 'iron', value: 450, unit: 'µg/l' }] }],
    },
    { id: 'b', changedAt },
  );
  const [iron] = one.quality!.results;
  expect(one.quality!.set.id).toBe('who2022');
  expect(iron).toMatchObject({ parameter: 'iron', unit: 'mg/l', value: 0.45, below: false });
  expect(iron!.limits.map(({ state }) => state)).toContain('above');
});

it('knows nothing of an empty record but that it is there', () => {
  const one = binderWellOf({ schemaVersion: 1 }, { id: 'c', changedAt });
  expect(one).toMatchObject({ id: 'c', number: '', outcome: 'open', screens: [], layers: [] });
  expect(one).not.toHaveProperty('quality');
  expect(one).not.toHaveProperty('yield');
});
