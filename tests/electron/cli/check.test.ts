import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownFolder, putRecord, type } from './typed.ts';

const sound = { bore: { sections: [{ from: 0, to: 20, diameter: 200 }], depthReached: 20 } };
const overlapping = {
  log: [
    { from: 0, to: 4, material: 'clay' },
    { from: 3, to: 6, material: 'sand' },
  ],
};

/** A pit latrine 5 m off: 30 m are wanted (Sphere, 2018, from memory). */
const dugNear = { ...sound, site: { surroundings: [{ kind: 'latrine', distance: 5 }] } };

interface SaidJson {
  readonly findings: readonly { readonly path?: string; readonly source?: string }[];
  readonly practice: object;
  readonly missing: readonly object[];
}

async function json(folder: string, file: string, ...more: string[]): Promise<SaidJson> {
  const { out } = await type(folder, ['check', file, '--json', ...more]);
  return JSON.parse(out.join('\n')) as SaidJson;
}

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

  it('says as errors what findings do not, as grains that stand the wrong way round', async () => {
    const folder = ownFolder();
    const fill = { fill: 'gravelPack', from: 10, to: 20, grainMin: 3, grainMax: 2 };
    const { code, out } = await type(folder, [
      'check',
      putRecord(folder, { ...sound, annulus: [fill] }),
    ]);
    expect(code).toBe(1);
    expect(out[0]).toMatch(/^error {4}annulus\[0\]\.grainMax: /);
    expect(out.at(-1)).toContain('0 not readable; 1 error,');
  });

  it('says once that days are out of order', async () => {
    const folder = ownFolder();
    const early = { ...sound, strikes: [{ depth: 9, at: '2026-03-01' }] };
    const file = putRecord(folder, { ...early, bore: { ...sound.bore, startedOn: '2026-03-02' } });
    const { code, out } = await type(folder, ['check', file]);
    expect(code).toBe(1);
    expect(out.filter((line) => line.startsWith('error'))).toHaveLength(1);
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

  it('judges by the practice of the record, and names it', async () => {
    const folder = ownFolder();
    const byHand = await type(folder, ['check', putRecord(folder, sound)]);
    expect(byHand.out.at(-2)).toMatch(/^Judged by: .+ \d\.\d \(handDrilled\)$/);
    const hammered = { bore: { ...sound.bore, method: 'downTheHoleHammer' } };
    const { out } = await type(folder, ['check', putRecord(folder, hammered)]);
    expect(out.at(-2)).toContain('(machineRock)');
  });

  it('says the source of what a rule found, and which field it lacks to judge', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, dugNear);
    const { code, out } = await type(folder, ['check', file]);
    expect(code).toBe(1);
    const found = out.find((line) => line.includes('surroundings'));
    expect(found).toMatch(/^(error|warning|note) .+ \[.+\]$/);
    const { findings, practice, missing } = await json(folder, file);
    expect(practice).toEqual({ id: 'handDrilled', version: '1.0', name: expect.any(String) });
    expect(findings.find(({ path }) => path?.startsWith('site'))?.source).not.toBe('');
    expect(missing.length).toBe(out.filter((line) => line.startsWith('unjudged')).length);
  });

  it('judges by a practice that is asked for, shipped or in a file', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, dugNear);
    const near = async (...more: string[]) =>
      (await json(folder, file, ...more)).findings.filter(({ path }) => path?.startsWith('site'))
        .length;
    const practice = {
      id: 'ours',
      version: '1',
      name: 'Ours',
      scope: 'All',
      basedOn: 'machineRock',
    };
    const figures = {
      latrineM: { value: 3, source: 'ours' },
      latrineGraveM: { value: 3, source: 'ours' },
    };
    const sources = { ours: { title: 'Our contract', mark: 'read' } };
    writeFileSync(
      path.join(folder, 'ours.json'),
      JSON.stringify({ ...practice, figures, sources }),
    );
    expect(await near('--practice', 'machineRock')).toBeGreaterThan(0);
    expect(await near('--practice', 'ours.json')).toBe(0);
  });

  it('refuses a practice that is not there, or that cannot be read', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, sound);
    const lost = await type(folder, ['check', file, '--practice', 'nowhere.json']);
    expect([lost.code, lost.err[0]]).toEqual([2, expect.stringContaining('handDrilled')]);
    const wrong = await type(folder, ['check', file, '--practice', file]);
    expect([wrong.code, wrong.err[0]]).toEqual([
      1,
      expect.stringMatching(/record\.json: .*version/),
    ]);
  });

  it('tells where the record names a practice that is not at hand', async () => {
    const folder = ownFolder();
    const file = putRecord(folder, { ...sound, identity: { practice: 'theirs' } });
    const { err } = await type(folder, ['check', file]);
    expect(err).toEqual([expect.stringContaining('theirs')]);
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
