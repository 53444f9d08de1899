import type { PaperMm } from '../../../../base/units.ts';
import { sayTitle } from '../../../../practice/saySource.ts';
import type { WellRecord } from '../../../../record/schema.ts';
import type { ParameterId } from '../../../../water/guidelines/guidelineSet.ts';
import type { QualityResult } from '../../../../water/results.ts';
import { sayNote, waterWords } from '../../../../water/sayWater.ts';
import type { Kit } from '../../../kit.ts';
import type { Piece } from '../../../parts/flow/part.ts';
import { gapPiece, textPieces, titlePiece } from '../../../parts/flow/pieces.ts';
import { qualityWordsIn } from '../words/qualityLanguages.ts';
import { intervalFigure, type QualityKit } from './figures.ts';
import { isShown, resultPieces } from './results.ts';
import { disinfectionPieces, samplePieces } from './samples.ts';

/** A line `what: a, b, c`; none without anything to list. */
function listed(
  kit: QualityKit,
  what: string,
  all: readonly string[],
  width: PaperMm,
  source: string,
  bold = false,
): Piece[] {
  if (all.length === 0) return [];
  const face = bold ? 'bold' : 'regular';
  return textPieces(kit, `${what}${kit.words.colon} ${all.join(', ')}.`, width, { face, source });
}

function namesOf(
  { words: { language } }: QualityKit,
  { parameters }: QualityResult,
  ids: readonly ParameterId[],
): string[] {
  return ids.map((id) => parameters.find((one) => one.parameter === id)?.name[language] ?? id);
}

/** What nobody looked for, and what the set does not know. */
function gapPieces(kit: QualityKit, result: QualityResult, width: PaperMm): Piece[] {
  const { own } = kit;
  const others = result.parameters
    .filter((one) => !isShown(one) && one.comparisons.length > 0)
    .map(({ parameter }) => parameter);
  const missing = namesOf(kit, result, result.missingBeforeHandover);
  const unknown = [...new Set(result.unknown.map(({ written }) => written))];
  const lines = [
    ...listed(kit, own.missing, missing, width, 'quality', true),
    ...listed(kit, own.notTested, namesOf(kit, result, others), width, 'quality'),
    ...listed(kit, own.unknown, unknown, width, result.unknown[0]?.path ?? 'quality'),
  ];
  return lines.length === 0 ? [] : [...lines, gapPiece(2.4)];
}

/** How a result was read is told where something was taken for granted. */
const plain = ['unit', 'form'];

/** Remarks on the samples, and how results were read where that is not plain. */
function notePieces(kit: QualityKit, result: QualityResult, width: PaperMm): Piece[] {
  const { language } = kit.words;
  const named = (id: ParameterId | undefined) =>
    id === undefined ? '' : `${namesOf(kit, result, [id]).join('')}${kit.words.colon} `;
  const said = result.notes.map((note) => ({
    text: `• ${named(note.parameter)}${sayNote(note, language)}`,
    source: note.path,
  }));
  const read = result.parameters.flatMap(({ parameter, last }) => {
    const taken = last?.conversions.filter((code) => !plain.includes(code)) ?? [];
    return taken.map((code) => ({
      text: `• ${named(parameter)}${kit.water.conversions[code]}`,
      source: last?.path,
    }));
  });
  const all = [...said, ...read];
  if (all.length === 0) return [];
  return [
    titlePiece(kit, kit.own.notes, width),
    ...all.flatMap(({ text, source }) => textPieces(kit, text, width, { source })),
    gapPiece(2.4),
  ];
}

/** What is reckoned from the results: balance of ions, hardness, dissolved solids, nitrogen. */
function reckonedLines(kit: QualityKit, result: QualityResult): string[] {
  const { reckoned } = kit.own;
  const { balance, states } = kit.water;
  const { colon } = kit.words;
  const { ionBalance, hardness, solids, nitrogen } = result;
  const from = (sample: number) => ` (${reckoned.sample} ${sample + 1})`;
  const lines: string[] = [];
  if (ionBalance) {
    const { cations, anions, error, lacking } = ionBalance;
    const without = namesOf(kit, result, lacking);
    const parts = [
      `${intervalFigure(kit, error.value, error.unit)} – ${balance[ionBalance.state]}`,
      `${reckoned.cations} ${intervalFigure(kit, cations.value, cations.unit)}`,
      `${reckoned.anions} ${intervalFigure(kit, anions.value, anions.unit)}`,
      ...(without.length > 0 ? [`${reckoned.lacking}${colon} ${without.join(', ')}`] : []),
    ];
    lines.push(`${reckoned.balance}${from(ionBalance.sample)}${colon} ${parts.join('; ')}`);
  }
  const told = [
    hardness && ([reckoned.hardness, hardness.sample, hardness.mgL, ''] as const),
    solids && ([reckoned.solids, solids.sample, solids.mgL, ''] as const),
    nitrogen &&
      ([
        reckoned.nitrogen,
        nitrogen.sample,
        nitrogen.ratio,
        ` – ${states[nitrogen.state]}`,
      ] as const),
  ];
  for (const one of told) {
    if (!one) continue;
    const [what, sample, { value, unit }, stands] = one;
    lines.push(`${what}${from(sample)}${colon} ${intervalFigure(kit, value, unit)}${stands}`);
  }
  return lines;
}

function reckonedPieces(kit: QualityKit, result: QualityResult, width: PaperMm): Piece[] {
  const lines = reckonedLines(kit, result);
  if (lines.length === 0) return [];
  return [
    titlePiece(kit, kit.own.reckoned.title, width),
    ...lines.flatMap((one) => textPieces(kit, one, width, { source: 'quality' })),
    gapPiece(2.4),
  ];
}

/** Where the values that stand on the page come from. */
function sourcePieces(kit: QualityKit, { parameters }: QualityResult, width: PaperMm): Piece[] {
  const shown = parameters.filter(isShown).flatMap(({ comparisons }) => comparisons);
  const titles = shown.map(({ value }) => sayTitle(value.source, kit.words.language));
  const all = [...new Set(titles)];
  if (all.length === 0) return [];
  return textPieces(kit, `${kit.own.sources}${kit.words.colon} ${all.join('; ')}.`, width);
}

/** What the page of water quality says, from the top; the sentence on what it does not say first. */
export function qualityPieces(
  base: Kit,
  record: WellRecord,
  result: QualityResult,
  width: PaperMm,
): Piece[] {
  const own = qualityWordsIn(base.words.language);
  const water = waterWords(base.words.language).quality;
  const kit: QualityKit = { ...base, own, water };
  const against = own.against
    .replace('{name}', result.set.name[kit.words.language])
    .replace('{version}', result.set.version);
  return [
    titlePiece(kit, own.title, width),
    ...textPieces(kit, own.noVerdict, width, { face: 'bold' }),
    ...textPieces(kit, against, width),
    gapPiece(2.4),
    ...samplePieces(kit, record, width),
    ...resultPieces(kit, result, width),
    ...gapPieces(kit, result, width),
    ...notePieces(kit, result, width),
    ...reckonedPieces(kit, result, width),
    ...disinfectionPieces(kit, record, width),
    titlePiece(kit, own.cautions.title, width),
    ...own.cautions.each.flatMap((one) => textPieces(kit, `• ${one}`, width)),
    gapPiece(2),
    ...sourcePieces(kit, result, width),
  ];
}
