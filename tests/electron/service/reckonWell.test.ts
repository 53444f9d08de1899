import { describe, expect, it } from 'vitest';
import { readFonts } from '../../../electron/files/fonts.ts';
import { reckonWell } from '../../../electron/service/reckonWell.ts';
import { makeAsBuilt, makeCommittee, makeLayingOut } from '../../../electron/service/sheet.ts';
import { fileNames, well } from '../../demo-data/wells.ts';

const made = { fonts: readFonts(), madeAt: '2026-01-15T08:00:00Z', paper: 'A4' } as const;

describe('a well that is reckoned once', () => {
  it.each(fileNames)('gives the papers of %s that it gives by itself', (name) => {
    const record = well(name);
    const given = { ...made, reckoned: reckonWell(record) };
    expect(makeAsBuilt(record, given).drawing).toEqual(makeAsBuilt(record, made).drawing);
    expect(makeLayingOut(record, given).drawing).toEqual(makeLayingOut(record, made).drawing);
    const languages = ['fr'] as const;
    const [handed, alone] = [given, made].map((one) =>
      makeCommittee(record, { ...one, languages }),
    );
    expect(handed!.drawing).toEqual(alone!.drawing);
  });

  it('is judged by what the user has, where it names that', () => {
    const record = { schemaVersion: 1, identity: { guidelines: 'ours' } } as const;
    const ours = { id: 'ours', version: '1', name: 'Ours', basedOn: 'who2022' };
    const file = { ...ours, parameters: {}, sources: {} };
    expect(reckonWell(record, { ownGuidelines: [file as never] }).guidelines.id).toBe('ours');
    expect(reckonWell(record).guidelines.id).toBe('who2022');
  });
});
