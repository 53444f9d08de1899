import { describe, expect, it } from 'vitest';
import type { Language } from '../../core/base/language.ts';
import type { BinderContent, BinderKit, Places } from '../../core/drawing/binder/binder.ts';
import { unknownPlaces } from '../../core/drawing/binder/binder.ts';
import { layDivider } from '../../core/drawing/binder/divider.ts';
import { layFailedPage } from '../../core/drawing/binder/failedPage.ts';
import type { IssuedPaper } from '../../core/drawing/binder/issued/issuedPaper.ts';
import { attachmentsOf } from '../../core/drawing/binder/attachments/attachments.ts';
import { layAttachments } from '../../core/drawing/binder/attachments/layAttachments.ts';
import { districtsOf } from '../../core/drawing/binder/order.ts';
import { layParts } from '../../core/drawing/binder/parts.ts';
import { presentParts } from '../../core/drawing/binder/presentParts.ts';
import type { Page } from '../../core/drawing/items.ts';
import type { PaperName } from '../../core/drawing/paper.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';
import { usedHatches } from '../../core/drawing/usedHatches.ts';
import type { Photo } from '../../core/record/photos.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import {
  contentOf,
  demoBinderWells,
  farPlaces,
  kitIn,
  longNamed,
  manyWells,
} from '../core/drawing/binder/madeBinder.ts';
import { photosOf } from '../pictures/photos.ts';
import { hatchesCarried } from './laws/depths.ts';
import { insideFrame, textsWhole } from './laws/frame.ts';
import { brokenBy } from './laws/index.ts';
import { measuresFinite, pensOfSeries, sixKinds } from './laws/pens.ts';
import { lettersLargeEnough, textsApart, textsAsMeasured } from './laws/texts.ts';

const pageLaws = {
  'nothing leaves the frame': insideFrame,
  'no text is cut by a clip': textsWhole,
  'no two texts stand on one another': textsApart,
  'capitals are at least 1.8 mm high': lettersLargeEnough,
  'every text is as wide as its font says': textsAsMeasured,
  'pens are of the ISO 128 series': pensOfSeries,
  'items are of the six kinds': sixKinds,
  'every measure is a finite number': measuresFinite,
  'every hatch used is carried, and no other': hatchesCarried,
};

/** Every page that the binder has of its own. */
function pagesOf(kit: BinderKit, content: BinderContent, places: Places): Page[] {
  const parts = presentParts(content).flatMap((id) => layParts[id](kit, content, places).pages);
  const dividers = districtsOf(content.wells).map((one) => layDivider(kit, content, one, places));
  const failed = content.failed.map((one) =>
    layFailedPage(
      kit,
      content,
      content.wells.find(({ id }) => id === one.wellId)!,
      one,
    ),
  );
  return [...parts, ...dividers, ...failed];
}

const record = { schemaVersion: 1 } as const;
const model = resolveWell(record);

function broken(kit: BinderKit, content: BinderContent, places: Places) {
  return brokenOn(kit, content, pagesOf(kit, content, places));
}

function brokenOn(kit: BinderKit, content: BinderContent, pages: readonly Page[]) {
  const drawing = {
    title: content.title,
    subject: '',
    author: '',
    language: kit.words.language,
    madeAt: content.madeAt,
    paperId: '0123456789abcdef0123456789abcdef',
    pages,
    hatches: usedHatches(pages),
  };
  return brokenBy({ record, model, paper: kit.paper, drawing, words: kit.words }, pageLaws);
}

/** One pixel. */
const drop =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNk+A8AAQUBAScY42YAAAAASUVORK5CYII=';

const sentence =
  'strings[0].components[3].length: the casing of 45.20 m does not go into the hole of 44.00 m. Measure again which of both is right, and change the record.';

const signed = { name: 'Délio Kalvāro', role: 'Superviseur des travaux', state: 'holds' } as const;

function issuedOf(wells: BinderContent['wells']): BinderContent['issued'] {
  const papers = wells.slice(0, 120).map((well, at): IssuedPaper => {
    const kind = (['asBuilt', 'layingOut', 'committee', undefined] as const)[at % 4];
    return {
      wellId: well.id,
      number: 1 + (at % 3),
      ...(kind && { kind }),
      paper: kind ? 'as-built A4' : 'a paper of a later version',
      languages: at % 2 ? 'en' : 'fr,pt',
      revision: 1 + (at % 2),
      newest: 2 + 10 * (at % 3),
      issuedAt: '2026-01-31T12:00:00+00:00',
      signatures: [signed, { ...signed, name: '', state: 'changed' } as const].slice(0, at % 3),
      hash: 'c0ffee0123456789'.repeat(4),
    };
  });
  return { papers, folder: 'Kelumvara 2026-issued' };
}

function withAll(content: BinderContent): BinderContent {
  const { wells } = content;
  const square = [[11.9, 6.9], [12.9, 6.9], [12.9, 8.3], [11.9, 8.3], [11.9, 6.9]] as const; // prettier-ignore
  const ids = wells.map(({ id }) => id);
  return {
    ...content,
    failed: [{ wellId: ids[0]!, sentence }],
    issued: issuedOf(wells),
    backdrop: [{ name: 'District de la haute vallée', closed: true, lines: [square] }],
    sections: [{ wellIds: ids.slice(0, 25) }, { title: 'One well', wellIds: ids.slice(0, 1) }],
  };
}

const made: Readonly<Record<string, () => BinderContent>> = {
  'of one well': () => contentOf(demoBinderWells.slice(0, 1)),
  'of the demo archive': () => contentOf(demoBinderWells),
  'of 300 wells': () => contentOf(manyWells(300)),
  'of 1000 wells': () => contentOf(manyWells(1000)),
  'of wells with long names': () => contentOf(longNamed(manyWells(40))),
};

const languages: readonly Language[] = ['en', 'fr', 'pt'];

describe.each(Object.entries(made))('the pages of a binder %s', (_, content) => {
  it.each(languages)('keep the laws of sheets in %s', (language) => {
    expect(broken(kitIn(language), withAll(content()), farPlaces)).toEqual({});
  });

  it('have a number that does not depend on where things stand', () => {
    const count = (places: Places) =>
      presentParts(content()).map(
        (id) => layParts[id](kitIn('en'), content(), places).pages.length,
      );
    expect(count(farPlaces)).toEqual(count(unknownPlaces));
  });
});

it.each<PaperName>(['A3'])('the pages keep the laws on %s', (paper) => {
  expect(broken(kitIn('fr', paper), withAll(contentOf(manyWells(60))), farPlaces)).toEqual({});
});

const full: Template = {
  name: ['Water Directorate of the Kelumvara Basin and its Northern Districts', 'Wells', 'Archive'],
  address: ['12 Long Quay', 'Kelumvara', 'office@example.org'],
  logos: [1, 2, 3].map((at) => ({ data: drop, width: 300, height: 90, says: `Drop ${at}` })),
  labels: { programme: 'Programme of the directorate and all of its partners' },
  disclaimer: 'Drawn from what was reported by those who worked at the well. '.repeat(6).trim(),
};

describe.each(['A4', 'A3'] as const)(
  'the cover on %s with all that a template may have',
  (paper) => {
    const long = {
      ...contentOf(longNamed(manyWells(40))),
      title: 'Wells of a wide district '.repeat(9),
    };
    const content = { ...long, template: full };

    it.each(languages)('keeps the laws of sheets in %s', (language) => {
      expect(broken(kitIn(language, paper), content, farPlaces)).toEqual({});
    });

    it('says who made the binder, and keeps the caution beside their disclaimer', () => {
      const kit = kitIn('en', paper);
      const [cover] = layParts.cover(kit, content, farPlaces).pages;
      const said = JSON.stringify(cover!.items);
      for (const text of [
        full.address[1],
        'Drop 3',
        'Drawn from what was',
        'Nothing here says that the water is safe.',
      ])
        expect(said).toContain(text);
    });
  },
);

describe.each(['A4', 'A3'] as const)('pages with attachments on %s', (paper) => {
  const { photos, images } = photosOf(5, ['portrait', 'panorama', 'landscape']);
  const long = 'What was seen on the day on which the pump was set, from the side of the road. ';
  const record = [
    ...photos.map((photo, at) => ({ ...photo, caption: long.repeat(1 + 12 * (at % 2)) })),
    ...photos.map((photo) => ({ ...photo, print: false, takenOn: '2026-01-31', bytes: 812_345 })),
    { file: `${'laboratory-report-'.repeat(9)}.pdf`, mediaType: 'application/pdf', bytes: 4e6 },
    {},
  ] as Photo[];
  const last = record.slice(0, 4).concat(record.slice(5));
  const heldOf = (hash: string) => (hash.endsWith('1') ? 'absent' : 'held');

  it.each(languages)('keep the laws of sheets in %s', (language) => {
    const kit = kitIn(language, paper);
    const [well] = longNamed(manyWells(1));
    const attachments = attachmentsOf(record, ['committee'], { images, heldOf });
    expect([attachments.pictures.length, attachments.files.length]).toEqual([6, 6]);
    const pages = layAttachments(kit, well!, attachments);
    expect(pages.length).toBeGreaterThanOrEqual(4);
    expect(brokenOn(kit, contentOf([well!]), pages)).toEqual({});
    const odd = attachmentsOf(last, ['committee'], { images, heldOf });
    expect(odd.pictures.length % 2).toBe(1);
    expect(brokenOn(kit, contentOf([well!]), layAttachments(kit, well!, odd))).toEqual({});
  });
});
