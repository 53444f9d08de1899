import { describeStratum } from '../../drawing/describe.ts';
import type { AnnulusZone, PieceModel, StringModel } from '../../model/wellModel.ts';
import { depthWords, entry, figure, rangeWords, type Entry, type Told } from '../entry.ts';

const ofRange = (pattern: string, range: string) => pattern.replace('{range}', range);

/** How deep and how wide the hole is, how and when it was made. */
export function boreEntries(told: Told): Entry[] {
  const { record, model, sheet, words } = told;
  const { method, startedOn, finishedOn, depthReached, depthFound } = record.bore ?? {};
  const depth = (metres: number | undefined) =>
    metres === undefined ? undefined : depthWords(told, metres);
  return [
    ...entry('bore', 'method', sheet.facts.method, [method && sheet.methods[method]]),
    ...entry('bore', 'drilled', sheet.facts.drilled, [startedOn, finishedOn]),
    ...entry('bore', 'reached', words.what.depthReached, [depth(depthReached)]),
    ...entry('bore', 'found', words.what.depthFound, [depth(depthFound)]),
    ...model.bore.sections.flatMap(({ fromM, toM, diameterMm }) => {
      const range = rangeWords(told, fromM, toM);
      return entry('bore', range, ofRange(words.of.hole, range), [
        figure(told, diameterMm, 'mm', 1),
      ]);
    }),
  ];
}

/** What the hole went through, and how many samples were laid out. */
export function groundEntries(told: Told): Entry[] {
  const { record, model, sheet, words } = told;
  const { samples } = record;
  return [
    ...entry('samples', 'count', words.what.groundSamples, [samples && String(samples.length)]),
    ...model.strata.flatMap((stratum) => {
      const range = rangeWords(told, stratum.fromM, stratum.toM);
      return entry('log', range, ofRange(words.of.ground, range), [
        describeStratum(stratum, sheet),
      ]);
    }),
  ];
}

/** A number behind the name of what there is more of; the first has none. */
const numbered = (what: string, at: number) => (at === 0 ? what : `${what} ${at + 1}`);

/** Neighbouring pieces of one kind and size as one stretch, from the top down. */
function stretchesOf({ pieces }: StringModel): [PieceModel, PieceModel][] {
  const stretches: [PieceModel, PieceModel][] = [];
  for (const piece of pieces) {
    const last = stretches.at(-1);
    const alike = (['kind', 'outsideMm', 'wallMm', 'material', 'slotWidthMm'] as const).every(
      (field) => last?.[1][field] === piece[field],
    );
    if (last && alike) last[1] = piece;
    else stretches.push([piece, piece]);
  }
  return stretches;
}

function stringEntries(told: Told, string: StringModel): Entry[] {
  const { sheet, words } = told;
  const name = string.index === 0 ? '' : ` (${string.name ?? string.index + 1})`;
  const key = `string ${string.index}`;
  const seen = new Map<string, number>();
  return [
    ...entry('strings', `${key} top`, words.what.casingTop + name, [
      depthWords(told, string.stickUpM),
    ]),
    ...entry('strings', `${key} foot`, words.what.casingFoot + name, [
      depthWords(told, string.bottomM),
    ]),
    ...stretchesOf(string).flatMap(([first, last]) => {
      const { kind, outsideMm, wallMm, material, slotWidthMm } = first;
      const at = seen.get(kind) ?? 0;
      seen.set(kind, at + 1);
      const size = [figure(told, outsideMm, ''), figure(told, wallMm, '')].filter(Boolean);
      const slot = figure(told, slotWidthMm, 'mm');
      return entry('strings', `${key} ${kind} ${at}`, numbered(sheet.pieces[kind], at) + name, [
        rangeWords(told, first.topM, last.bottomM),
        material,
        size.join(' × '),
        slot && `${sheet.slot} ${slot}`,
      ]);
    }),
  ];
}

export function casingEntries(told: Told): Entry[] {
  return told.model.strings.flatMap((string) => stringEntries(told, string));
}

/** Fills that somebody wrote down, the topmost of each kind first. */
export function annulusEntries(told: Told): Entry[] {
  const { sheet, model } = told;
  const seen = new Map<string, number>();
  const whatOf = ({ fill, sanitary }: AnnulusZone) =>
    sanitary ? `${sheet.sanitarySeal}, ${sheet.fills[fill]}` : sheet.fills[fill];
  return model.annulus
    .filter(({ path }) => path !== undefined)
    .flatMap((zone) => {
      const what = whatOf(zone);
      const at = seen.get(what) ?? 0;
      seen.set(what, at + 1);
      return entry('annulus', `${what} ${at}`, numbered(what, at), [
        rangeWords(told, zone.fromM, zone.toM),
        figure(told, zone.pouredLitres, 'L', 0),
        figure(told, zone.sacks, sheet.quantities.sacks, 1),
      ]);
    });
}
