import { byteOf } from './codePage.ts';

/** One line pair of a DXF file: what kind of value, and the value. */
export type Code = readonly [code: number, value: string | number];

/** A hundredth of a millimetre of ground at any scale that a sheet has. */
const decimals = 5;

function written(value: string | number): string {
  if (typeof value === 'string') return value;
  if (Number.isInteger(value)) return String(value);
  const fixed = value.toFixed(decimals).replace(/0+$/, '');
  return fixed.endsWith('.') ? `${fixed}0` : fixed.replace(/^-(0\.0*)$/, '$1');
}

/** Pairs as the file has them, a code and a value on a line each. */
export function writeCodes(codes: readonly Code[]): string {
  return codes.map(([code, value]) => `${code}\n${written(value)}\n`).join('');
}

/** Always with a decimal point: some readers tell a length from a count by it. */
export const real = (value: number): string => {
  const text = written(value);
  return text.includes('.') ? text : `${text}.0`;
};

/**
 * Letters that the file's code page lacks as `\\U+XXXX`. What would be read as a command of the
 * text is written so that it is not.
 */
export function dxfText(text: string): string {
  return [...text]
    .map((letter) => {
      const point = letter.codePointAt(0)!;
      if (point < 32) return ' ';
      if (byteOf(letter) !== undefined && letter !== '\\') return letter;
      return point > 0xffff ? '?' : `\\U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
    })
    .join('')
    .replaceAll('%%', '% %');
}
