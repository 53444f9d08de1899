/** Decimals of a point: 0.00004 mm. */
const shares = 10_000;

/**
 * A number as content streams hold it, with four decimals at most.
 * @throws on what is no number: the page would be lost.
 */
export function numeral(value: number): string {
  const rounded = Math.round(value * shares) / shares;
  if (!Number.isFinite(rounded)) throw new Error(`A page cannot hold the number ${value}`);
  // Minus nought is written as nought.
  return String(rounded + 0);
}

const shadeOf = (hex: string) => Math.round((parseInt(hex, 16) / 255) * 1000) / 1000;

/** The operands of a colour and how many they are: grey is written as one. */
function shades(ink: string): readonly number[] {
  if (!/^#[0-9a-f]{6}$/i.test(ink)) throw new Error(`${ink} is no colour of the form #rrggbb`);
  const [r, g, b] = [ink.slice(1, 3), ink.slice(3, 5), ink.slice(5, 7)];
  return r === g && g === b ? [shadeOf(r)] : [r, g, b].map(shadeOf);
}

/** The operator that fills in a colour. */
export function fillOperator(ink: string): string {
  const parts = shades(ink);
  return `${parts.join(' ')} ${parts.length === 1 ? 'g' : 'rg'}`;
}

/** The like for lines. */
export function strokeOperator(ink: string): string {
  const parts = shades(ink);
  return `${parts.join(' ')} ${parts.length === 1 ? 'G' : 'RG'}`;
}
