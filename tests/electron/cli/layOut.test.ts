import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { LaidOut } from '../../../core/layingOut/proposal.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { ownFolder, putRecord, type } from './typed.ts';

/** Clay to 20 m, sand to 34 m, clay to the foot of the hole. */
const well = {
  bore: { sections: [{ from: 0, to: 38, diameter: 250 }], depthReached: 38 },
  log: [
    { from: 0, to: 20, material: 'clay', moisture: 'moist' },
    { from: 20, to: 34, material: 'sand', moisture: 'waterBearing' },
    { from: 34, to: 38, material: 'clay', moisture: 'moist' },
  ],
  layingOut: {
    rate: 1,
    drySeasonLevel: 12,
    drawdown: 3,
    pipes: [
      { kind: 'plain', count: 12, length: 3, outside: 125, wall: 4.8, insertion: 0.1 },
      { kind: 'screen', count: 3, length: 3, outside: 125, wall: 4.8, insertion: 0.1, openArea: 5 },
    ],
  },
} as const;

function readWell(folder: string, file: string): WellRecord {
  return JSON.parse(readFileSync(path.join(folder, file), 'utf8')) as WellRecord;
}

describe('borefolio lay-out', () => {
  it('prints each proposal with its reason, its tally and its fills', async () => {
    const folder = ownFolder();
    const { code, out, err } = await type(folder, ['lay-out', putRecord(folder, well)]);
    expect([code, err]).toEqual([0, []]);
    expect(out[0]).toMatch(/^Safest \(safest\): \d+\.\d\d m of screen, \d cuts?$/);
    expect(out.some((line) => /^ {2}1 +bottom cap/.test(line))).toBe(true);
    expect(out.some((line) => / +screen +pipes\[1\] +/.test(line))).toBe(true);
    expect(out.some((line) => line.includes('gravel pack'))).toBe(true);
  });

  it('prints everything as JSON', async () => {
    const folder = ownFolder();
    const { out } = await type(folder, ['lay-out', putRecord(folder, well), '--json']);
    const { proposals, missing, obstacles } = JSON.parse(out.join('\n')) as LaidOut;
    expect(proposals.length).toBeGreaterThan(0);
    expect([missing, obstacles]).toEqual([[], []]);
  });

  it('writes the record with the wanted proposal taken, and leaves the old one alone', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, well);
    const before = readWell(folder, file);
    const args = ['lay-out', file, '--take', 'safest', '-o', 'taken.json'];
    const { code, out } = await type(folder, args);
    expect([code, out]).toEqual([0, ['Written: taken.json']]);
    const taken = readWell(folder, 'taken.json');
    expect(taken.layingOut?.proposal).toMatchObject({ kind: 'safest', takenOn: '2026-03-02' });
    expect(taken.strings).toEqual(taken.layingOut?.proposal?.strings);
    expect(taken.annulus).toEqual(taken.layingOut?.proposal?.annulus);
    expect(readWell(folder, file)).toEqual(before);
    expect((await type(folder, ['check', 'taken.json'])).err).toEqual([]);
  });

  it('gives 1 and says what is needed where nothing can be laid out', async () => {
    const folder = ownFolder();
    const bare = putRecord(folder, { bore: well.bore, log: well.log });
    const { code, out } = await type(folder, ['lay-out', bare]);
    expect(code).toBe(1);
    expect(out).toContain('needed   layingOut.pipes: plain pipes on site, with their length');
    expect(out.at(-1)).toBe('No completion can be laid out.');
  });

  it('gives 1 and names the limit in the way', async () => {
    const folder = ownFolder();
    const few = well.layingOut.pipes.map((pipe) => ({ ...pipe, count: 1 }));
    const record = { ...well, layingOut: { ...well.layingOut, pipes: few } };
    const { code, out } = await type(folder, ['lay-out', putRecord(folder, record)]);
    expect(code).toBe(1);
    expect(out[0]).toMatch(/^limit {4}The plain pipes on site are too few or do not fit/);
  });

  it('refuses a kind that is not there, and one without a place to write to', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, well);
    const unknown = await type(folder, ['lay-out', file, '--take', 'cheapest', '-o', 'x.json']);
    expect(unknown.code).toBe(2);
    const nowhere = await type(folder, ['lay-out', file, '--take', 'safest']);
    expect(nowhere.code).toBe(2);
    expect(existsSync(path.join(folder, 'x.json'))).toBe(false);
  });
});
