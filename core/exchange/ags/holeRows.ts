import type { AnnulusFill } from '../../record/annulus.ts';
import type { LogInterval } from '../../record/log.ts';
import { materials, type Material } from '../../record/materials.ts';
import type { GroundSample } from '../../record/samples.ts';
import type { Level, Strike } from '../../record/water.ts';
import { known } from '../../base/known.ts';
import type { Piece } from '../tables/joinPieces.ts';
import { reason } from '../reasons/reason.ts';
import { convertLength, lengthUnitOf } from '../tables/units.ts';
import { inWords } from '../laid/words.ts';
import { understandWords } from '../words/understandWords.ts';
import type { Cells } from './cells.ts';
import { fillCodes, fillOf, groundOfCode, laidOut, pieceOfCode } from './codes.ts';
import type { SaidByFile } from './fileWords.ts';

const tidy = (value: number) => Number(value.toPrecision(12));
const joined = (...texts: (string | undefined)[]) => texts.filter(Boolean).join('; ') || undefined;
const isMaterial = (word: string): word is Material =>
  (materials as readonly string[]).includes(word);

/** The range of a row; told where it is half said or upside down, silent where nothing is. */
function rangeOf(cells: Cells, group: string): { from: number; to: number } | undefined {
  const [top, base] = [`${group}_TOP`, `${group}_BASE`];
  const [from, to] = [cells.metres(top), cells.metres(base)];
  if (from === undefined && to === undefined) return undefined;
  if (from !== undefined && to !== undefined && to > from) return { from, to };
  const says =
    from === undefined || to === undefined
      ? reason('halfRange', { part: group })
      : reason('rangeUpsideDown', { from, to });
  cells.tell(to === undefined ? base : top, says, false);
  return undefined;
}

/** A row that marks the end of a hole names a depth and nothing else. */
const saysAnything = (cells: Cells, ...headings: string[]) =>
  headings.some((heading) => cells.text(heading) !== undefined);

function groundOf(cells: Cells, said: SaidByFile) {
  const [code, words] = [cells.text('GEOL_LEG'), cells.text('GEOL_DESC')];
  const saidOfCode = code === undefined ? undefined : said('GEOL_LEG', code);
  const own = code === undefined ? undefined : groundOfCode(code, saidOfCode, isMaterial);
  if (own) {
    const [material, ...seconds] = own;
    return { material, qualifiers: seconds.map((one) => ({ material: one })) };
  }
  if (saidOfCode !== undefined) return understandWords(saidOfCode);
  return words === undefined ? undefined : understandWords(words);
}

export function intervalOf(cells: Cells, said: SaidByFile): LogInterval | undefined {
  if (!saysAnything(cells, 'GEOL_DESC', 'GEOL_LEG', 'GEOL_REM')) return undefined;
  const range = rangeOf(cells, 'GEOL');
  if (!range) return undefined;
  const ground = groundOf(cells, said);
  const seconds = ground?.qualifiers ?? [];
  return {
    ...range,
    ...known({ material: ground?.material }),
    ...(seconds.length === 0 ? {} : { qualifiers: [...seconds] }),
    ...known({ remarks: cells.text('GEOL_REM'), words: cells.text('GEOL_DESC') }),
  } as LogInterval;
}

export function pieceOf(cells: Cells, said: SaidByFile): Piece | undefined {
  const range = rangeOf(cells, 'PIPE');
  if (!range) return undefined;
  const type = cells.text('PIPE_TYPE');
  const kind = type === undefined ? 'plain' : pieceOfCode(type, said('PIPE_TYPE', type));
  if (!kind) {
    cells.tell('PIPE_TYPE', reason('noPieceKind', { word: type! }), false);
    return undefined;
  }
  const cons = cells.text('PIPE_CONS');
  const material = cons === undefined ? undefined : (said('PIPE_CONS', cons) ?? cons);
  const outside = cells.millimetres('PIPE_DIAM');
  const remark = cells.text('PIPE_REM');
  return {
    ...range,
    ...known({ string: cells.text('PIPE_REF') }),
    component: {
      kind,
      ...known({ material, outside, remark }),
      length: tidy(range.to - range.from),
    },
    sideUnsaid: outside !== undefined,
  } as Piece;
}

/** Sand and what else is only near to a kind of fill leave the file's own word in the remark. */
export function fillRowOf(cells: Cells, said: SaidByFile): AnnulusFill | undefined {
  if (!saysAnything(cells, 'BKFL_DESC', 'BKFL_LEG')) return undefined;
  const range = rangeOf(cells, 'BKFL');
  if (!range) return undefined;
  const [code, written] = [cells.text('BKFL_LEG'), cells.text('BKFL_DESC')];
  const saidOfCode = code === undefined ? undefined : said('BKFL_LEG', code);
  const fill = fillOf(code ?? '', code === undefined ? written : saidOfCode);
  if (!fill) {
    const word = saidOfCode ?? written ?? code!;
    cells.tell('BKFL_LEG', reason('noFill', { word }), false);
    return undefined;
  }
  const word = written ?? saidOfCode;
  const exact = [inWords(fill), fillCodes[fill].says.toLowerCase()].includes(
    word?.toLowerCase() ?? '',
  );
  const remark = joined(exact ? undefined : word, cells.text('BKFL_REM'));
  return { ...range, fill, ...known({ remark }) } as AnnulusFill;
}

export function strikeOf(cells: Cells, rises: readonly Cells[]): Strike | undefined {
  const depth = cells.metres('WSTG_DPTH');
  if (depth === undefined) return undefined;
  const own = rises.filter(
    (one) => one.metres('WSTG_DPTH') === depth && one.text('WSTD_POST') !== undefined,
  );
  const last = own
    .toSorted((a, b) => (a.number('WSTD_NMIN') ?? 0) - (b.number('WSTD_NMIN') ?? 0))
    .at(-1);
  if (own.length > 1) cells.tell('WSTD', reason('lastRise'), true);
  const time = cells.time('WSTG_DTIM');
  const remark = joined(
    cells.text('WSTG_REM'),
    time?.asWritten && `Time as written: ${time.asWritten}`,
  );
  return {
    depth,
    ...known({ at: time?.at, rise: last?.metres('WSTD_POST') }),
    ...known({ afterMinutes: last?.number('WSTD_NMIN'), remark }),
  } as Strike;
}

/** Depth to water below ground; WDEPC is a code of our own, below the top of the casing. */
const levelTypes: Readonly<Record<string, Level['datum']>> = { WDEP: 'ground', WDEPC: 'casingTop' };

const states = ['static', 'pumping', 'recovering'] as const;

/** @param point Which of several points in the hole it was read at. */
export function levelOf(cells: Cells, point: string | undefined): Level | undefined {
  const type = cells.text('MOND_TYPE') ?? '';
  const datum = levelTypes[type];
  if (!datum) {
    cells.tell('MOND_TYPE', reason('noReading', { type }), false);
    return undefined;
  }
  const reading = cells.number('MOND_RDNG');
  if (reading === undefined) return undefined;
  const written = cells.text('MOND_UNIT') ?? 'm';
  const unit = lengthUnitOf(written);
  if (unit === undefined) {
    cells.tell('MOND_UNIT', reason('levelUnit', { unit: written }), false);
    return undefined;
  }
  const time = cells.time('MOND_DTIM');
  const [first = '', ...rest] = (cells.text('MOND_REM') ?? '').split('; ');
  const state = states.find((one) => one === first);
  const said = state === undefined ? cells.text('MOND_REM') : rest.join('; ') || undefined;
  const remark = joined(point, said, time?.asWritten && `Time as written: ${time.asWritten}`);
  const depth = convertLength(reading, unit, 'm');
  return {
    ...known({ at: time?.at }),
    reading: depth,
    datum,
    ...known({ state, remark }),
  } as Level;
}

/** Water and gas are sampled too; a record's samples are of the ground (types: the list of 4.1). */
const notGround = ['W', 'EW', 'G', 'GAS'];

export function sampleOf(cells: Cells): GroundSample | undefined {
  const from = cells.metres('SAMP_TOP');
  const type = cells.text('SAMP_TYPE');
  if (from === undefined || notGround.includes(type ?? '')) return undefined;
  const named = type === laidOut.code ? undefined : type;
  const label = [named, cells.text('SAMP_REF')].filter(Boolean).join(' ') || undefined;
  const remark = joined(cells.text('SAMP_DESC'), cells.text('SAMP_REM'));
  return {
    from,
    to: cells.metres('SAMP_BASE') ?? from,
    ...known({ label, remark }),
  } as GroundSample;
}
