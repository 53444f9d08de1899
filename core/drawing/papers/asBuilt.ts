import type { Memory } from '../../base/memory.ts';
import type { Language } from '../../base/language.ts';
import type { Fonts } from '../../base/text/metrics.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { GuidelineSet } from '../../water/guidelines/guidelineSet.ts';
import type { Kit } from '../kit.ts';
import { usedHatches } from '../usedHatches.ts';
import type { Box, Drawing, Page } from '../items.ts';
import { paperOf, type Orientation, type PaperName } from '../paper.ts';
import type { Block } from '../parts/block.ts';
import type { SwitchedColumn } from '../parts/columnNames.ts';
import { wellCodeText } from '../parts/code/wellCodeText.ts';
import { drawHeadStrip, labelled, underStrip, type Template } from '../parts/headStrip.ts';
import type { PhotoImages } from '../parts/photos.ts';
import { detailWordsIn } from '../parts/details/words/languages.ts';
import type { RevisionNote } from '../parts/revisionNote.ts';
import { sheetWordsIn } from '../words/languages.ts';
import { paperMark, type Making } from './paperMark.ts';
import { drawFlowPage } from './asBuilt/flowPages.ts';
import { documentsOn, flowPages } from './asBuilt/flowParts.ts';
import { drawParticularsPage, layOwnPanel } from './asBuilt/particularsPage.ts';
import { hasOwnPage, type Plan } from './asBuilt/page.ts';
import { drawPhotoPage, photoPages } from './asBuilt/photoPages.ts';
import { planSheet } from './asBuilt/plan.ts';
import type { SheetInput, ShownJudgement } from './asBuilt/sheetInput.ts';
import { shownColumns } from './asBuilt/shownColumns.ts';
import { titleFields, type SheetFacts } from './asBuilt/titleFields.ts';
import { drawWellPage, layPanelBeside, spareRoom, spareUnder } from './asBuilt/wellPage.ts';

export { isBroken, wholePlan } from './asBuilt/wholeAxis.ts';

export interface AsBuiltOptions extends Making {
  readonly paper: PaperName;
  /** How the paper lies; A4 upright and A3 lying where absent. */
  readonly orientation?: Orientation;
  /** Columns of the log besides ruler, ground and section; those with data that fit where absent. */
  readonly columns?: readonly SwitchedColumn[];
  readonly fonts: Fonts;
  /** Of the sheet's own words; English where absent. What people wrote stays as it is. */
  readonly language?: Language;
  /** The well judged by its practice: its findings stand beside the model's. */
  readonly judgement?: ShownJudgement;
  /** What samples are compared with; the general values where absent. */
  readonly guidelines?: GuidelineSet;
  /** Pictures by hash; a photo whose picture is not among them has an empty frame. */
  readonly images?: PhotoImages;
  /** Whether long plain stretches may be left out by a marked break; they may where absent. */
  readonly brokenAxis?: boolean;
  /** What changed in the last revisions, as the table of revisions says it. */
  readonly revisions?: readonly RevisionNote[];
  /** Whether it shows what is in no revision yet, as title block and table of revisions say. */
  readonly draft?: boolean;
  /** Whether this is an issue, as the title block says. */
  readonly issued?: boolean;
  /** What the organisation has on its papers; no head strip where absent. */
  readonly template?: Template;
  /** Pages and scale to keep, as `planAsBuilt` gave them; the best are chosen where absent. */
  readonly plan?: Plan;
  /** Of the sheet that is drawn again as the record changes; what is drawn stays the same. */
  readonly memory?: Memory;
}

type Basis = Pick<
  AsBuiltOptions,
  | 'paper'
  | 'orientation'
  | 'columns'
  | 'fonts'
  | 'language'
  | 'images'
  | 'judgement'
  | 'guidelines'
  | 'brokenAxis'
  | 'memory'
  | 'template'
>;

/** Pages with the head strip of an organisation over their frames. */
function headed(pages: readonly Page[], { kit, paper, template }: SheetInput): readonly Page[] {
  if (!template) return pages;
  const strip = drawHeadStrip(kit, template, paper);
  return pages.map((page) => ({ ...page, items: [...page.items, strip] }));
}

function inputOf(record: WellRecord, model: WellModel, options: Basis): SheetInput {
  const { fonts, memory, judgement, guidelines, columns, template } = options;
  const { images = {}, brokenAxis = true } = options;
  const words = labelled(sheetWordsIn(options.language ?? 'en'), template);
  const kit: Kit = { fonts, words, ...(memory && { memory }) };
  const shared = memory?.share('model', model) ?? model;
  const judged = judgement && { judgement };
  const compared = guidelines && { guidelines };
  const whole = paperOf(options.paper, options.orientation);
  const paper = template ? underStrip(whole) : whole;
  const headed = template && { template };
  const shown = { record, model: shared, kit, paper, images, brokenAxis };
  const input = { ...shown, ...judged, ...compared, ...headed };
  return { ...input, columns: shownColumns(input, columns) };
}

/** Pages and scale of the as-built sheet of a well: handed back, a sheet keeps them. */
export function planAsBuilt(record: WellRecord, model: WellModel, options: Basis): Plan {
  return planSheet(inputOf(record, model, options));
}

/** Free room of the last page of the well, where details may begin. */
function spareOf(input: SheetInput, plan: Plan, panel: Block | undefined): Box | undefined {
  const height = panel ? spareUnder(input, panel) : plan.spare;
  return height > 0 ? spareRoom(input, height) : undefined;
}

function pagesOf(input: SheetInput, options: AsBuiltOptions): Page[] {
  const { kit, record } = input;
  const planned = options.plan ?? planSheet(input);
  const plan = options.memory?.share('plan', planned) ?? planned;
  const pictured = photoPages(input);
  const panel = hasOwnPage(plan) ? layOwnPanel(input, plan) : undefined;
  const side = plan.rest === 'side' ? layPanelBeside(input, plan) : undefined;
  const spare = spareOf(input, plan, panel ?? side);
  const flowing = flowPages(input, spare, (panel ?? side)?.tallyShows);
  const [beside, further] = spare ? [flowing[0], flowing.slice(1)] : [undefined, flowing];
  const ofWell = plan.views.length + (panel ? 1 : 0);
  const before = ofWell + further.length;
  const sheets = before + pictured.length;
  const common = {
    madeAt: options.madeAt,
    ...(options.revision !== undefined && { revision: options.revision }),
    ...(options.issued && { issued: true }),
    ...(options.draft && { draft: true }),
    sheets,
  };
  const fieldsFor = (facts: Partial<SheetFacts>, sheet: number) =>
    titleFields(kit, record, { ...common, ...facts, sheet });
  const onLast = panel ? undefined : beside;
  const wells = plan.views.map((view, at) => {
    const { widthScale } = view;
    const code = at === 0 ? wellCodeText(record, options) : undefined;
    const facts = { depthScale: plan.scale, code, ...(widthScale !== undefined && { widthScale }) };
    return drawWellPage(input, plan, at, fieldsFor(facts, at + 1), { side, details: onLast });
  });
  const own = panel ? [drawParticularsPage(input, panel, fieldsFor({}, ofWell), beside)] : [];
  const flowed = further.map((page, at) => {
    const document = documentsOn(page, kit);
    return drawFlowPage(input, page, fieldsFor({ document }, ofWell + at + 1));
  });
  const photos = pictured.map((each, at) =>
    drawPhotoPage(input, each, fieldsFor({}, before + at + 1)),
  );
  return [...wells, ...own, ...flowed, ...photos];
}

/** The revisions that a sheet tells of, with a draft behind them; none where there was but one. */
function notesOf({ revisions, draft, madeAt, language = 'en' }: AsBuiltOptions) {
  if (!revisions || revisions.length === 0 || !draft) return revisions;
  return [...revisions, { on: madeAt, changes: [detailWordsIn(language).draft] }];
}

/**
 * The as-built sheet of a well, true to scale: log and section on one depth axis, quantities,
 * legend, particulars, marks and title block, on as many pages as it takes; after them
 * details, what pumping tests and water samples tell, and photos.
 */
export function drawAsBuilt(
  record: WellRecord,
  model: WellModel,
  options: AsBuiltOptions,
): Drawing {
  const revisions = notesOf(options);
  const input = { ...inputOf(record, model, options), ...(revisions && { revisions }) };
  const { kit } = input;
  const drawn = headed(pagesOf(input, options), input);
  const pages = options.memory?.share('pages', drawn) ?? drawn;
  return {
    ...paperMark(record, options),
    subject: titleFields(kit, record, { madeAt: options.madeAt, sheet: 1, sheets: 1 }).documentType,
    language: kit.words.language,
    pages,
    hatches: usedHatches(pages),
  };
}
