import { describe, expect, it } from 'vitest';
import { drawSheet, paperNames } from './drawn.ts';
import { brokenBy } from './laws/index.ts';
import { demoWells, exampleWells, publishedWells } from './wells.ts';

const wells = { demo: demoWells, published: publishedWells, awkward: exampleWells };

describe.each(Object.entries(wells))('the sheets of the %s wells', (_, list) => {
  it.each(list)('%s keep every law on A4 and A3', (_name, record) => {
    for (const paper of paperNames) expect(brokenBy(drawSheet(record, paper))).toEqual({});
  });
});

describe('the same record', () => {
  it.each([...demoWells, ...exampleWells])('%s gives the same drawing again', (_, record) => {
    for (const paper of paperNames) {
      const first = JSON.stringify(drawSheet(record, paper).drawing);
      expect(JSON.stringify(drawSheet(structuredClone(record), paper).drawing)).toBe(first);
    }
  });

  it('gives a drawing that JSON can carry whole', () => {
    for (const [, record] of [...demoWells, ...exampleWells]) {
      const { drawing } = drawSheet(record, 'A4');
      expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
    }
  });
});
