import { reason, type Reason } from '../reasons/reason.ts';
import { convertLength, type LengthUnit } from '../tables/units.ts';
import { at, type XmlElement } from '../xml/readXml.ts';

/** Tells what of an element could not be taken as it stands. */
export type Tell = (element: XmlElement, says: Reason, kept: boolean) => void;

/** Units of length by their codes (UCUM, from memory), their names and the ends of their links. */
const lengthCodes: Readonly<Record<string, LengthUnit>> = {
  m: 'm',
  meter: 'm',
  metre: 'm',
  cm: 'cm',
  centimeter: 'cm',
  centimetre: 'cm',
  mm: 'mm',
  millimeter: 'mm',
  millimetre: 'mm',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  '[ft_i]': 'ft',
  ftus: 'ftUS',
  '[ft_us]': 'ftUS',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '[in_i]': 'in',
};

/**
 * Cubic metres an hour in one of each: litres and cubic metres exactly; the US gallon is 3.785411784
 * litres (NIST SP 811, appendix B.8).
 */
const flowCodes: Readonly<Record<string, number>> = {
  'm3/h': 1,
  'm3/hr': 1,
  'm3/d': 1 / 24,
  'm3/day': 1 / 24,
  'm3/s': 3600,
  'l/s': 3.6,
  'l/min': 0.06,
  'l/h': 0.001,
  gpm: 0.227124707,
  'gal/min': 0.227124707,
  '[gal_us]/min': 0.227124707,
};

/** The end of a link, as in `http://…/unit#Foot`. */
export const linkEnd = (href: string) =>
  href
    .replace(/[/#]+$/, '')
    .split(/[/#]/)
    .at(-1) ?? '';

function uomOf(quantity: XmlElement): readonly string[] {
  const { code, title, href } = at(quantity, 'uom')?.attributes ?? {};
  return [code, title, href && linkEnd(href)].flatMap((one) => (one ? [one.toLowerCase()] : []));
}

export function lengthUnitIn(names: readonly string[]): LengthUnit | undefined {
  return names.map((name) => lengthCodes[name]).find((unit) => unit !== undefined);
}

function numberIn(element: XmlElement, text: string, tell: Tell): number | undefined {
  const value = text === '' ? NaN : Number(text);
  if (Number.isFinite(value)) return value;
  if (text !== '') tell(element, reason('notNumberOut', { text }), true);
  return undefined;
}

/** A length inside an element, in metres or millimetres; absent where nobody knows it. */
export function lengthIn(
  element: XmlElement | undefined,
  to: 'm' | 'mm',
  tell: Tell,
): number | undefined {
  const quantity = at(element, 'Quantity');
  if (!element || !quantity) return undefined;
  const value = numberIn(element, at(quantity, 'value')?.text ?? '', tell);
  if (value === undefined) return undefined;
  const names = uomOf(quantity);
  const unit = lengthUnitIn(names);
  if (unit !== undefined) return convertLength(value, unit, to);
  tell(element, reason('noLength', { unit: names[0] ?? '', value }), true);
  return undefined;
}

/** A flow inside an element, cubic metres an hour. */
export function flowIn(element: XmlElement | undefined, tell: Tell): number | undefined {
  const quantity = at(element, 'Quantity');
  if (!element || !quantity) return undefined;
  const value = numberIn(element, at(quantity, 'value')?.text ?? '', tell);
  if (value === undefined) return undefined;
  const names = uomOf(quantity);
  const factor = names.map((name) => flowCodes[name]).find((one) => one !== undefined);
  if (factor !== undefined) return Number((value * factor).toPrecision(12));
  tell(element, reason('noFlow', { unit: names[0] ?? '', value }), true);
  return undefined;
}

/** How documents say that nobody knows. */
export const nobodyKnows = /def\/nil\/|^(unknown|missing|none|n\/a)$/i;

/** The title of a reference, or the end of its link; absent where it says that nobody knows. */
export function referenceIn(element: XmlElement | undefined): string | undefined {
  const { title, href = '' } = element?.attributes ?? {};
  if (!element || nobodyKnows.test(href) || nobodyKnows.test(title ?? '')) return undefined;
  const text = title ?? (href === '' ? element.text : linkEnd(href));
  return text === '' || nobodyKnows.test(text) ? undefined : text;
}

/** Text of a category or a text; absent where it says that nobody knows. */
export function wordsIn(element: XmlElement | undefined): string | undefined {
  const text = element?.text.replace(/\s+/g, ' ').trim() ?? '';
  return text === '' || nobodyKnows.test(text) ? undefined : text;
}

/** A day of a date with or without a zone, `1987-08-14+00:00`. */
export function dayIn(text: string | undefined): string | undefined {
  return /^\d{4}-\d\d-\d\d/.exec(text ?? '')?.[0];
}

/** A moment with its offset, else the day. */
export function momentIn(text: string | undefined): string | undefined {
  const whole = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)$/.test(text ?? '');
  return whole ? text : dayIn(text);
}
