import { expect, it } from 'vitest';
import type { WellModel } from '../../../core/model/wellModel.ts';
import { ownFolder, putRecord, type } from './typed.ts';

const bore = { sections: [{ from: 0, to: 20, diameter: 200 }], depthReached: 20 };

it('borefolio model prints the resolved well as JSON', async () => {
  const folder = ownFolder();
  const { code, out, err } = await type(folder, ['model', putRecord(folder, { bore })]);
  const model = JSON.parse(out.join('\n')) as WellModel;
  expect(code).toBe(0);
  expect(err).toEqual([]);
  expect(model.bore.depthM).toBe(20);
  expect(model.bore.sections).toEqual([
    { fromM: 0, toM: 20, diameterMm: 200, path: 'bore.sections[0]' },
  ]);
});

it('borefolio model prints what could be read, says the rest, and gives 1', async () => {
  const folder = ownFolder();
  const file = putRecord(folder, {
    bore,
    log: [
      { from: 0, to: -2 },
      { from: 0, to: 'x' },
    ],
  });
  const { code, out, err } = await type(folder, ['model', file]);
  expect(code).toBe(1);
  expect((JSON.parse(out.join('\n')) as WellModel).bore.depthM).toBe(20);
  expect(err.some((line) => line.startsWith('record.json: log[1].to'))).toBe(true);
});
