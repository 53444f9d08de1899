import { say } from '../../parts/words.ts';
import { readAs, unread, type Reading } from '../../state/field.ts';
import { ownUnit, unitOf, type Kind } from './units.ts';

const vulgar: Readonly<Record<string, string>> = {
  '¼': ' 1/4',
  '½': ' 1/2',
  '¾': ' 3/4',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
};

/** The marks that keyboards and spreadsheets put for foot, inch and minus, as plain ones. */
function plain(text: string): string {
  return text
    .trim()
    .replace(/[′’‘]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace('−', '-')
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (mark) => vulgar[mark] ?? mark)
    .trim();
}

const figure = String.raw`(?:(?:(\d+)[ -])?(\d+)/([1-9]\d*)|(\d+(?:[.,]\d*)?|[.,]\d+))`;
const name = String.raw`("|'|%|°|\p{L}+(?:³|3(?!\d))?(?:/\p{L}+)?\.?)`;
const term = new RegExp(String.raw`\s*${figure}\s*${name}?\s*`, 'uy');

interface Term {
  readonly amount: number;
  readonly unit: string;
}

function amountOf([, whole = '0', over, under, decimal]: RegExpExecArray): number {
  if (decimal !== undefined) return Number(decimal.replace(',', '.'));
  return Number(whole) + Number(over) / Number(under);
}

/** The numbers of a text with the units behind them; undefined where it is something else. */
function termsOf(text: string): Term[] | undefined {
  const terms: Term[] = [];
  term.lastIndex = 0;
  while (term.lastIndex < text.length) {
    const found = term.exec(text);
    if (!found) return undefined;
    terms.push({ amount: amountOf(found), unit: found[5] ?? '' });
  }
  return terms;
}

/** In `12'6` and `1h30` the last number stands for the next smaller unit. */
const smaller: Readonly<Record<string, string>> = { "'": '"', ft: '"', pi: '"', h: 'min' };

function spelledOut(terms: readonly Term[]): Term[] {
  return terms.map((one, at) => {
    const before = terms[at - 1]?.unit.toLowerCase() ?? '';
    return one.unit === '' && at > 0 ? { ...one, unit: smaller[before] ?? '' } : one;
  });
}

/** A unit of another kind is refused by name, since the number was meant for another field. */
function converted(text: string, terms: readonly Term[], unit: string): Reading {
  const own = ownUnit(unit);
  if (!own) return unread(say.entry.onlyUnit(text, unit));
  let sum = 0;
  for (const { amount, unit: written } of terms) {
    const known = unitOf(written);
    if (!known) return unread(say.entry.unknownUnit(text, written, unit));
    if (known.kind !== own.kind)
      return unread(say.entry.wrongKind(text, say.entry.kinds[known.kind], unit));
    sum += amount * known.worth;
  }
  return readAs(Number((sum / own.worth).toFixed(own.decimals)));
}

/**
 * Reads a number with a unit behind it, as in `6 in`, `12'6"`, `150mm`, `1.5 l/s` or `1h30`, and
 * gives it in the field's own unit, rounded where it had to be converted. Undefined where the text
 * names no unit, or one of its numbers has none.
 */
export function readMeasure(text: string, unit: string): Reading | undefined {
  const written = plain(text);
  const terms = spelledOut(termsOf(written.replace(/^[+-]\s*/, '')) ?? []);
  const [first, ...more] = terms;
  if (!first || terms.some((one) => one.unit === '')) return undefined;
  const asOwn = more.length === 0 && first.unit.toLowerCase() === unit.toLowerCase();
  const reading = asOwn ? readAs(first.amount) : converted(text.trim(), terms, unit);
  if (!reading.ok || !written.startsWith('-')) return reading;
  return readAs(-(reading.value as number));
}

/**
 * What a text with units comes to, unrounded: litres of a volume, minutes of a time. Undefined
 * where it names no unit, or one of another kind.
 */
export function exactly(text: string, kind: Kind): number | undefined {
  const terms = spelledOut(termsOf(plain(text)) ?? []);
  const known = terms.map(({ amount, unit }) => ({ amount, unit: unitOf(unit) }));
  if (known.length === 0 || known.some(({ unit }) => unit?.kind !== kind)) return undefined;
  return known.reduce((sum, { amount, unit }) => sum + amount * unit!.worth, 0);
}
