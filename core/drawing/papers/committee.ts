import type { Language } from '../../base/language.ts';
import { known } from '../../base/known.ts';
import type { Fonts } from '../../base/text/metrics.ts';
import type { WellModel } from '../../model/wellModel.ts';
import { practiceOf } from '../../practice/choosePractice.ts';
import type { Practice } from '../../practice/practice.ts';
import type { WellRecord } from '../../record/schema.ts';
import { guidelinesOf } from '../../water/guidelines/chooseGuidelines.ts';
import type { GuidelineSet } from '../../water/guidelines/guidelineSet.ts';
import type { Drawing, Item, Page } from '../items.ts';
import { paperOf, type PaperName } from '../paper.ts';
import type { Template } from '../parts/headStrip.ts';
import type { PhotoImages } from '../parts/photos.ts';
import { usedHatches } from '../usedHatches.ts';
import { sheetWordsIn } from '../words/languages.ts';
import { roomy, type CommitteeKit } from './committee/committeeKit.ts';
import { shifted } from './committee/mirror.ts';
import { paperMark, type Making } from './paperMark.ts';
import type { CommitteeContent } from './committee/content.ts';
import { layCommittee } from './committee/page.ts';
import { committeeWordsIn } from './committee/words/languages.ts';

export interface CommitteeOptions extends Making {
  readonly fonts: Fonts;
  /** One or two; English where none. */
  readonly languages?: readonly Language[];
  /** Two languages stand side by side on a lying A3 sheet, else each on an A4 sheet. */
  readonly paper?: PaperName;
  /** Whose distances hold; the record's own among the shipped ones where absent. */
  readonly practice?: Practice;
  /** What samples are compared with; the record's own among the shipped ones where absent. */
  readonly guidelines?: GuidelineSet;
  /** Pictures of marks that are at hand, by hash. */
  readonly images?: PhotoImages;
  /** What the organisation has on its papers; no head strip where absent. */
  readonly template?: Template;
}

const a4 = paperOf('A4');
const { width, height } = a4;
const wide = paperOf('A3');

/** Pages of an A4 sheet, the front of each language before its back. */
function onA4(languages: readonly Item[][][]): Page[] {
  return languages.flat().map((items) => ({ width, height, items }));
}

/** The first language on the left half of an A3 sheet, the second on the right one. */
function onA3(languages: readonly Item[][][]): Page[] {
  const count = Math.max(...languages.map(({ length }) => length));
  return Array.from({ length: count }, (_, page) => ({
    width: wide.width,
    height: wide.height,
    items: languages.flatMap((pages, half) =>
      (pages[page] ?? []).map((item) => shifted(item, half * width)),
    ),
  }));
}

/**
 * The sheet of a well for its water users committee: a plain picture, the figures that matter, care,
 * what to keep away, what the tests of the water found, whom to call. One upright A4 page a
 * language. `model` is that of `record`. It never says that the water may be drunk.
 */
export function drawCommittee(
  record: WellRecord,
  model: WellModel,
  options: CommitteeOptions,
): Drawing {
  const { fonts, languages = ['en'], paper = 'A4', madeAt, revision } = options;
  const { images = {}, template } = options;
  const practice = options.practice ?? practiceOf(record);
  const guidelines = options.guidelines ?? guidelinesOf(record.identity?.guidelines);
  const facts = { madeAt, ...known({ revision }) };
  const shown = { record, model, guidelines, facts, images };
  const content: CommitteeContent = { ...shown, ...(template && { template }) };
  const kits = languages.slice(0, 2).map((language): CommitteeKit => {
    const words = sheetWordsIn(language);
    return { fonts, words, own: committeeWordsIn(language), practice, spacing: roomy };
  });
  const laid = kits.map((kit) => layCommittee(kit, content, a4));
  const pages = paper === 'A3' && laid.length === 2 ? onA3(laid) : onA4(laid);
  const [first = 'en'] = languages;
  return {
    ...paperMark(record, options),
    subject: committeeWordsIn(first).title,
    language: first,
    pages,
    hatches: usedHatches(pages),
  };
}
