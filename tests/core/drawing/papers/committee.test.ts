import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import { committeeWordsIn } from '../../../../core/drawing/papers/committee/words/languages.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { freeMarks } from '../../../../core/drawing/parts/freeMarks.ts';
import { well } from '../../../demo-data/wells.ts';
import { drawCommitteeSheet } from '../../../sheets/committee.ts';
import { placedOn, textsOn } from '../../../sheets/placed.ts';

const bare = (rest: Partial<WellRecord>): WellRecord => ({ schemaVersion: 1, ...rest });

/** As a face shows it, which has but one kind of space. */
const plain = (text: string) => text.replace(/\s/g, ' ');

function sheet(record: WellRecord, language: (typeof languages)[number] = 'en') {
  const { drawing } = drawCommitteeSheet(record, [language]);
  const texts = drawing.pages.flatMap(textsOn);
  const placed = drawing.pages.flatMap(placedOn);
  return {
    drawing,
    says: texts.map(({ item }) => item.text).join(' '),
    groups: new Set(placed.flatMap(({ groups }) => groups)),
    sources: new Set(placed.flatMap(({ source }) => source ?? [])),
  };
}

describe('the committee sheet', () => {
  it('tells name, number and village, and the figures that matter', () => {
    const { says, drawing } = sheet(well('hand-drilled-32m.json'));
    for (const told of ['KV-25-011', '9.9', '21.5', '45', 'buckets an hour', '+999 01 20 45 11'])
      expect(says).toContain(told);
    expect(drawing.title).toContain('KV-25-011');
    expect(drawing.subject).toBe('Well sheet for the water committee');
  });

  it('leads from what it shows to the fields of the record', () => {
    const { sources } = sheet(well('hand-drilled-32m.json'));
    for (const path of ['identity.number', 'pump.intake', 'site.committee.telephone', 'marks[0]'])
      expect(sources).toContain(path);
  });

  it('has the marks of committee, contractor and supervisor', () => {
    const { says } = sheet(well('hand-drilled-32m.json'));
    for (const name of ['Kãlia Tsorumbé', 'gondal', 'Yamélia']) expect(says).toContain(name);
  });

  it('tells those who seal which boxes for marks stand free', () => {
    const roles = (name: string) =>
      sheet(well(name))
        .drawing.pages.flatMap(freeMarks)
        .map(({ role }) => role);
    expect(roles('laid-out-45m.json')).toEqual(['committee', 'contractor', 'supervisor']);
    expect(roles('hand-drilled-32m.json')).toEqual([]);
  });

  it('leaves the heading of a free box out of the room to sign in', () => {
    const { drawing } = sheet(well('laid-out-45m.json'));
    const [room] = drawing.pages.flatMap(freeMarks);
    const { y } = textsOn(drawing.pages[0]!)
      .map(({ item }) => item)
      .findLast(({ text }) => text === 'Committee')!;
    expect(room!.box.y).toBeGreaterThan(y);
    expect(room!.box.y).toBeLessThan(y + 3);
  });

  it('takes distances from the practice, and says what stands nearer', () => {
    const { says } = sheet(well('shallow-direct-action-9m.json'));
    expect(says).toContain('animals 30 m now 24 m');
  });
});

describe('a well that nobody draws from', () => {
  const states = ['dry', 'abandonedAndSealed', 'decommissioned'] as const;

  it.each(states)(
    'that is %s says so, and has no care of a pump, no yield and no tests',
    (state) => {
      for (const language of languages) {
        const own = committeeWordsIn(language);
        const record = bare({ identity: { state }, bore: { depthReached: 20 }, pump: { rate: 1 } });
        const { says, groups } = sheet(record, language);
        expect(says).toContain(plain(own.banners[state].says));
        expect(says).toContain(plain(own.banners[state].more));
        expect(says).toContain(own.closed.title);
        for (const title of [own.care.title, own.figures.bucketsAnHour, own.quality.title])
          expect(says).not.toContain(title);
        expect(groups.has('pump')).toBe(false);
      }
    },
  );
});

describe('a well that is not finished', () => {
  it('is said to be planned where it is laid out, and no test of its water is spoken of', () => {
    const { says } = sheet(well('laid-out-45m.json'));
    expect(says).toContain('PLANNED: this well is not built yet');
    expect(says).not.toContain(committeeWordsIn('en').quality.title);
  });

  it('is said not to be finished where it is drilled', () => {
    expect(sheet(bare({ identity: { state: 'drilled' } })).says).toContain('NOT FINISHED');
  });
});

describe('what nobody wrote', () => {
  const { says, groups, drawing } = sheet(bare({}));

  it('is left to be filled in by hand, with no figure in its place', () => {
    expect(says).toContain('Depth of the well');
    expect(says).not.toMatch(/\b0 (m|mm)\b/);
    const lines = drawing.pages.flatMap(placedOn).filter(({ groups: around, item }) => {
      return around.includes('figure') && item.kind === 'path' && item.stroke?.width === 0.25;
    });
    expect(lines).toHaveLength(6);
  });

  it('is not drawn: no fence, no drain, no water', () => {
    expect(groups.has('pictureLabel')).toBe(false);
    expect(says).not.toContain('gravel');
  });
});
