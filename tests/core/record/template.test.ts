import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readRecord } from '../../../core/record/read.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { templateOf } from '../../../core/record/template.ts';

const well: WellRecord = {
  schemaVersion: 1,
  identity: {
    id: '11111111-1111-4111-8111-111111111111',
    number: 'KA-012',
    name: 'School',
    programme: 'Rural water 3',
    contract: 'Lot 2',
    permit: 'P-7',
    client: 'District',
    contractor: 'Tonou & Sons',
    driller: 'A. Tonou',
    supervisor: 'B. Kalo',
    purpose: 'School',
    practice: 'machineRock',
    state: 'completed',
  },
  site: {
    country: 'Kalo',
    region: 'North',
    district: 'Zou',
    commune: 'Lémo',
    village: 'Ostra',
    spot: 'behind the market',
    latitude: 1.5,
    longitude: -6.5,
    positionMethod: 'satellite receiver',
    elevation: 320,
    elevationDatum: 'mean sea level',
    households: 40,
    committee: { name: 'Water users' },
    surroundings: [{ kind: 'latrine', distance: 30 }],
  },
  bore: {
    method: 'rotaryJetting',
    rig: 'small rig',
    startedOn: '2026-03-01',
    finishedOn: '2026-03-04',
    fluid: 'water',
    additive: 'polymer',
    fluidLost: 300,
    sections: [
      { from: 0, to: 6, diameter: 200, method: 'handAuger' },
      { from: 6, to: 31.5, diameter: 140 },
    ],
    depthReached: 31.5,
    remark: 'slow',
  },
  log: [{ from: 0, to: 31.5, material: 'sand' }],
  strings: [
    {
      name: 'main',
      set: { by: 'bottom', depth: 31 },
      measuredDepth: 31,
      components: [
        { kind: 'cap' },
        { kind: 'screen', count: 3, outside: 125, wall: 4.8, length: 2.9, slotWidth: 0.5 },
        { kind: 'plain', count: 2, outside: 125, wall: 4.8, length: 2.9, centralisers: [1] },
        { kind: 'plain', count: 5, outside: 125, wall: 4.8, length: 2.9, remark: 'scratched' },
        { kind: 'plain', outside: 125, wall: 4.8, length: 1.4 },
      ],
    },
  ],
  annulus: [{ from: 5, to: 31, fill: 'gravelPack', sacks: 20 }],
  headworks: { padLength: 2 },
  levels: [{ reading: 6.4, datum: 'ground' }],
  pump: { kind: 'ropeAndWasher', intake: 24 },
  marks: [{ role: 'supervisor', name: 'B. Kalo' }],
  notes: 'done',
};

describe('a template', () => {
  it('takes over who works for whom, and the place down to the commune', () => {
    const { identity, site } = templateOf(well);
    expect(identity).toEqual({
      programme: 'Rural water 3',
      contract: 'Lot 2',
      client: 'District',
      contractor: 'Tonou & Sons',
      driller: 'A. Tonou',
      supervisor: 'B. Kalo',
      purpose: 'School',
      practice: 'machineRock',
    });
    expect(site).toEqual({
      country: 'Kalo',
      region: 'North',
      district: 'Zou',
      commune: 'Lémo',
      positionMethod: 'satellite receiver',
      elevationDatum: 'mean sea level',
    });
  });

  it('takes over how it is drilled, and no diameters, since their depths are another hole’s', () => {
    expect(templateOf(well)['bore']).toEqual({
      method: 'rotaryJetting',
      rig: 'small rig',
      fluid: 'water',
      additive: 'polymer',
    });
  });

  it('takes over each kind of pipe once, without counts and without where it was set', () => {
    const pipe = { outside: 125, wall: 4.8, length: 2.9 };
    expect(templateOf(well)['strings']).toEqual([
      {
        name: 'main',
        components: [
          { kind: 'cap' },
          { kind: 'screen', ...pipe, slotWidth: 0.5 },
          { kind: 'plain', ...pipe },
          { kind: 'plain', ...pipe, length: 1.4 },
        ],
      },
    ]);
  });

  it('has nothing else of the well', () => {
    const template = templateOf({ ...well, later: 1 } as WellRecord);
    expect(Object.keys(template)).toEqual(['schemaVersion', 'identity', 'site', 'bore', 'strings']);
  });

  it('of a well that says nothing says nothing', () => {
    expect(templateOf({ schemaVersion: 1 })).toEqual({ schemaVersion: 1 });
    const blank: WellRecord = {
      schemaVersion: 1,
      identity: { number: 'A', client: '' },
      bore: { depthReached: 3, sections: [] },
      strings: [],
    };
    expect(templateOf(blank)).toEqual({ schemaVersion: 1 });
  });

  it('holds no day, moment or depth of any of the example wells', () => {
    const folder = path.resolve(import.meta.dirname, '../../../demo-data');
    const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
    expect(files.length).toBeGreaterThan(5);
    for (const file of files) {
      const reading = readRecord(JSON.parse(readFileSync(path.join(folder, file), 'utf8')));
      if (reading.kind !== 'ok') throw new Error(file);
      const text = JSON.stringify(templateOf(reading.record));
      expect(text).not.toMatch(/\d{4}-\d\d-\d\d|"(from|to|depth|number|village|latitude)":/);
    }
  });
});
