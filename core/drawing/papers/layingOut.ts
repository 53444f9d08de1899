import { known } from '../../base/known.ts';
import type { Language } from '../../base/language.ts';
import type { Fonts } from '../../base/text/metrics.ts';
import type { WellModel } from '../../model/wellModel.ts';
import { practiceOf } from '../../practice/choosePractice.ts';
import type { Practice } from '../../practice/practice.ts';
import { reckonQuantities } from '../../quantities/reckonQuantities.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { Drawing, Item, Page } from '../items.ts';
import { paperOf, type Paper } from '../paper.ts';
import { drawHeadStrip, labelled, underStrip, type Template } from '../parts/headStrip.ts';
import { solid } from '../pens.ts';
import { group, rectangle } from '../shapes.ts';
import { usedHatches } from '../usedHatches.ts';
import { sheetWordsIn } from '../words/languages.ts';
import { drawHead } from './layingOut/head.ts';
import { laidOutOf, type LaidOut } from './layingOut/laidOut.ts';
import { leadingBack } from './layingOut/leadingBack.ts';
import { drawOnePage, drawSeveralPages } from './layingOut/pages.ts';
import { contentOf, planOnePage, type Content } from './layingOut/plan.ts';
import { paperMark, type Making } from './paperMark.ts';
import type { SheetKit } from './layingOut/sheetKit.ts';
import { layingOutWordsIn } from './layingOut/words/languages.ts';

export interface LayingOutOptions extends Making {
  readonly fonts: Fonts;
  /** Of the sheet's own words; English where absent. What people wrote stays as it is. */
  readonly language?: Language;
  /** That sacks are reckoned by; the record's own among the shipped ones where absent. */
  readonly practice?: Practice;
  /** What the organisation has on its papers; no head strip where absent. */
  readonly template?: Template;
}

const whole = paperOf('A4');

function bodiesOf(kit: SheetKit, content: Content): Item[][] {
  const plan = planOnePage(kit, content);
  return plan ? [drawOnePage(kit, content, plan)] : drawSeveralPages(kit, content);
}

function pagesOf(kit: SheetKit, laid: LaidOut, paper: Paper, options: LayingOutOptions): Page[] {
  const { record, model } = laid;
  const quantities = reckonQuantities(record, model, kit.practice);
  const bodies = bodiesOf(kit, contentOf(kit, laid, paper, quantities));
  const { madeAt, revision, template } = options;
  const { x, y } = paper.frame;
  return bodies.map((body, at) => {
    const which = { sheet: at + 1, sheets: bodies.length };
    const facts = { madeAt, ...which, ...(revision !== undefined && { revision }) };
    const items = [
      ...(template ? [drawHeadStrip(kit, template, paper)] : []),
      drawHead(kit, laid, facts, x, y),
      ...body,
      group('frame', [rectangle(paper.frame, { stroke: solid('frame') })]),
    ];
    return {
      width: paper.width,
      height: paper.height,
      items: items.map((item) => leadingBack(item, laid.pathOf)),
    };
  });
}

/**
 * The laying-out sheet of a well, to be followed at the hole: pipes in the order they go in with
 * running lengths and joints, what to paint on them, fills with amounts and soundings, room for
 * what was measured. One upright A4 page; further ones where the tally is longer. `model` is that
 * of `record`; a well that is built is drawn as it was proposed, where the record kept that.
 */
export function drawLayingOut(
  record: WellRecord,
  model: WellModel,
  options: LayingOutOptions,
): Drawing {
  const { fonts, language = 'en', template } = options;
  const own = layingOutWordsIn(language);
  const practice = options.practice ?? practiceOf(record);
  const words = labelled(sheetWordsIn(language), template);
  const disclaimer = template?.disclaimer;
  const kit: SheetKit = { fonts, words, own, practice, ...known({ disclaimer }) };
  const paper = template ? underStrip(whole) : whole;
  const pages = pagesOf(kit, laidOutOf(record, model), paper, options);
  return {
    ...paperMark(record, options),
    subject: own.title,
    language: kit.words.language,
    pages,
    hatches: usedHatches(pages),
  };
}
