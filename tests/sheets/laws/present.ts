import { describe } from '../../../core/drawing/describe.ts';
import { depthFigure } from '../../../core/drawing/figures.ts';
import { factsOf } from '../../../core/drawing/parts/particulars.ts';
import type { SheetWords } from '../../../core/drawing/words/words.ts';
import type { Stratum } from '../../../core/model/wellModel.ts';
import { fonts, type DrawnSheet } from '../drawn.ts';
import { faceHas } from '../measure.ts';
import { placedOn, textsOn, type PlacedText } from '../placed.ts';
import type { Law } from './law.ts';

/** Every part of the well has left its mark on some page. */
export const partsShown: Law = ({ model, drawing }) => {
  const shown = new Set(drawing.pages.flatMap(placedOn).map(({ source }) => source));
  const paths = [
    ...model.strata.map(({ path }) => path),
    ...model.bore.sections.map(({ path }) => path),
    ...model.strings.map(({ path }) => path),
    ...model.strings.flatMap(({ pieces }) => pieces.map(({ path }) => path)),
    ...model.annulus.flatMap(({ path }) => path ?? []),
    ...model.strikes.map(({ path }) => path),
  ];
  return [...new Set(paths)].filter((path) => !shown.has(path)).map((path) => `${path} is absent`);
};

/** Letters alone, as the sheet shows them: what no font has is a box. */
function lettersOf(text: string): string {
  const seen = [...text.normalize('NFC')].filter((letter) => !/\s/.test(letter));
  return seen
    .map((letter) => (faceHas('regular', letter) || faceHas('fallback', letter) ? letter : '□'))
    .join('');
}

function joined(texts: readonly PlacedText[]): string {
  return texts.map(({ item }) => lettersOf(item.text)).join('');
}

/** What the log's own rows say of a stratum; several rows of one range share it. */
function wordsOf({ interval, others }: Stratum, words: SheetWords): string[] {
  const rows = [interval, ...others.map((other) => other.interval)];
  return rows.map((row) => lettersOf(describe(row, words)));
}

const saysAll = (place: string, words: readonly string[]) =>
  words.every((one) => place.includes(one));

interface Places {
  /** Letters beside the log, page by page. */
  readonly beside: readonly string[];
  /** Letters in the notes. */
  readonly notes: string;
}

function placesOf({ drawing }: DrawnSheet, { path }: Stratum): Places {
  const pages = drawing.pages.map((page) => textsOn(page).filter(({ source }) => source === path));
  const inGroup = (name: string) => (text: PlacedText) => text.groups.includes(name);
  return {
    beside: pages.map((texts) => joined(texts.filter(inGroup('descriptions')))),
    notes: joined(pages.flat().filter((one) => !inGroup('descriptions')(one))),
  };
}

/** Notes that were left out, by the last line under their title; other lists count their own. */
function notesLeftOut({ drawing, words }: DrawnSheet): number {
  const more = new RegExp(`^(\\d+) ${words.moreFindings}$`);
  const counts = drawing.pages.map((page) => {
    const texts = textsOn(page).map(({ item }) => item);
    const title = texts.find(({ text }) => text === words.notes);
    const under = texts.filter(({ x, y }) => title && x === title.x && y > title.y);
    const left = under.map(({ text }) => more.exec(text)?.[1]);
    return Number(left.find((one) => one !== undefined) ?? 0);
  });
  return counts.reduce((sum, one) => sum + one, 0);
}

/**
 * Each description stands in full beside the log or in the notes; one that stands nowhere in full
 * is begun with an ellipsis at its end, and counted among the notes left out.
 */
export const descriptionsWhole: Law = (sheet) => {
  const lacking = sheet.model.strata.filter((stratum) => {
    const { beside, notes } = placesOf(sheet, stratum);
    const words = wordsOf(stratum, sheet.words);
    return ![...beside, notes].some((place) => saysAll(place, words));
  });
  if (lacking.length <= notesLeftOut(sheet)) return [];
  return lacking.map(({ path }) => `the words of ${path} stand nowhere in full`);
};

/** What is cut beside the log says so by its ellipsis. */
export const cutsSaid: Law = (sheet) =>
  sheet.model.strata.flatMap((stratum) => {
    const { beside } = placesOf(sheet, stratum);
    const words = wordsOf(stratum, sheet.words);
    return beside
      .filter((one) => one !== '' && !saysAll(one, words) && !one.endsWith('…'))
      .map((one) => `${stratum.path} says “${one}”`);
  });

/** Each of the particulars stands in full, or ends in an ellipsis. */
export const factsSaid: Law = ({ record, model, drawing, words }) => {
  const pages = drawing.pages.map((page) =>
    textsOn(page).filter(({ groups }) => groups.includes('particulars')),
  );
  return factsOf({ fonts: fonts.metrics, words }, record, model).flatMap(
    ({ what, says, source }) => {
      const shown = pages.map((texts) => joined(texts.filter((one) => one.source === source)));
      const whole = lettersOf(what + says);
      if (shown.some((one) => one.includes(whole) || one.endsWith('…'))) return [];
      return [`“${says}” of ${source} stands nowhere in full, nor is it cut with an ellipsis`];
    },
  );
};

/** Where a sheet has a table of pieces, each piece of each string stands in it, over all its pages. */
export const tallyWhole: Law = ({ model, drawing, words }) => {
  const texts = drawing.pages.flatMap(textsOn).filter(({ groups }) => groups.includes('tally'));
  if (texts.length === 0) return [];
  const shown = new Set(texts.map(({ item, source }) => `${source} ${item.text}`));
  const kit = { fonts: fonts.metrics, words };
  return model.strings
    .flatMap(({ pieces }) => pieces)
    .filter(({ path, bottomM }) => !shown.has(`${path} ${depthFigure(kit, bottomM)}`))
    .map(({ path, bottomM }) => `the piece of ${path} down to ${bottomM} m is in no row`);
};
