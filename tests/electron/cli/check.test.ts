import { describe, expect, it } from 'vitest';
import { ownFolder, putRecord, type } from './typed.ts';

const sound = { bore: { sections: [{ from: 0, to: 20, diameter: 200 }], depthReached: 20 } };
const overlapping = {
  log: [
    { from: 0, to: 4, material: 'clay' },
    { from: 3, to: 6, material: 'sand' },
  ],
};

describe('borefolio check', () => {
  it('gives 1 and says what contradicts itself, where, and what to do', async () => {
    const folder = ownFolder();
    const { code, out, err } = await type(folder, ['check', putRecord(folder, overlapping)]);
    expect(code).toBe(1);
    expect(out.find((line) => line.startsWith('error'))).toMatch(
      /^error {4}log\[1\].*: .+\. .+\.$/,
    );
    expect(out.at(-1)).toMatch(/^0 not readable; 1 error, \d+ warnings?, \d+ notes?$/);
    expect(err).toEqual([]);
  });

  it('gives 1 and names the place of what it cannot read', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, { log: [{ from: 'three', to: 4 }] });
    const { code, out } = await type(folder, ['check', file]);
    expect(code).toBe(1);
    expect(out[0]).toMatch(/^unread {3}log\[0\]\.from: /);
  });

  it('says as errors what findings do not: days, grains and readings out of order', async () => {
    const folder = ownFolder();
    const early = { ...sound, strikes: [{ depth: 9, at: '2026-03-01' }] };
    const file = putRecord(folder, { ...early, bore: { ...sound.bore, startedOn: '2026-03-02' } });
    const { code, out } = await type(folder, ['check', file]);
    expect(code).toBe(1);
    expect(out[0]).toBe('error    strikes[0].at: 2026-03-01 is before bore.startedOn 2026-03-02');
    expect(out.at(-1)).toContain('0 not readable; 1 error,');
  });

  it('says an interval upside down once', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, { ...sound, log: [{ from: 20, to: 0 }] });
    const { out } = await type(folder, ['check', file]);
    expect(out.filter((line) => line.includes('log[0]'))).toHaveLength(1);
  });

  it('gives 0 where nothing worse than a warning is found', async () => {
    const folder = ownFolder();
    const { code, out } = await type(folder, ['check', putRecord(folder, sound)]);
    expect(code).toBe(0);
    expect(out.at(-1)).toContain('0 errors');
  });

  it('says with --json the same for programs', async () => {
    const folder = ownFolder();
    const { code, out } = await type(folder, ['check', putRecord(folder, overlapping), '--json']);
    const said = JSON.parse(out.join('\n')) as { findings: object[]; troubles: object[] };
    expect(code).toBe(1);
    expect(said.troubles).toEqual([]);
    expect(said.findings).toContainEqual(
      expect.objectContaining({
        code: 'log.overlap',
        severity: 'error',
        sentence: expect.any(String) as string,
        todo: expect.any(String) as string,
      }),
    );
  });

  it('refuses what is no record in one sentence', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, { schemaVersion: 999 });
    const { code, err } = await type(folder, ['check', file]);
    expect(code).toBe(1);
    expect(err).toHaveLength(1);
    expect(err[0]).toContain('record.json: schemaVersion');
  });
});
