import type { Quantity, QuantityInput } from '../../../core/quantities/quantity.ts';

/** Units in decimetres, litres and kilograms, in which the formulas hold without factors. */
const inBase: Readonly<Record<string, number>> = {
  mm: 0.01,
  m: 10,
  L: 1,
  kg: 1,
  g: 1,
  'kg/l': 1,
  'kg/m³': 0.001,
  '1': 1,
  sacks: 1,
  pieces: 1,
};

const lowered = '₀₁₂₃₄₅₆₇₈₉';

function baseOf({ value, unit }: QuantityInput): number {
  const factor = inBase[unit];
  if (factor === undefined) throw new Error(`No input is told in ${unit}.`);
  return value * factor;
}

/** An expression of a formula, worked out; a symbol without input is 0, as d of a full ring. */
function work(expression: string, inputs: ReadonlyMap<string, number>): number {
  const code = expression
    .replace(/π/g, '(3.141592653589793)')
    .replace(/·/g, '*')
    .replace(/−/g, '-')
    .replace(/[A-Za-zρ]+[₀-₉]*/g, (symbol) => `(${inputs.get(symbol) ?? 0})`)
    .replace(/²/g, '**2');
  return Number(new Function(`return ${code};`)());
}

function sum(expression: string, inputs: ReadonlyMap<string, number>): number {
  const counts = [...inputs.keys()].flatMap((symbol) => /[₀-₉]+$/.exec(symbol)?.[0] ?? []);
  return [...new Set(counts)]
    .map((count) => work(expression.replaceAll('ᵢ', count), inputs))
    .reduce((all, part) => all + part, 0);
}

/** The value of a quantity as its own formula and inputs give it. */
export function evaluate({ formula, inputs, unit }: Quantity): number {
  const given = new Map(inputs.map((input) => [input.symbol, baseOf(input)]));
  const back = unit === 'm' ? 10 : 1;
  if (formula === 'n = Σ nᵢ, nᵢ ≥ Lᵢ / a')
    return inputs
      .filter(({ symbol }) => lowered.includes(symbol.at(-1)!))
      .reduce((all, { symbol }) => all + whole(given.get(symbol)! / given.get('a')!), 0);
  const [, sign, right] = /^\w+ (=|≥) (.+)$/.exec(formula) ?? [];
  if (right === undefined) throw new Error(`${formula} is no formula.`);
  const value = right.startsWith('Σ ') ? sum(right.slice(2), given) : work(right, given);
  return sign === '≥' ? whole(value) : value / back;
}

function whole(value: number): number {
  return Math.ceil(value - 1e-9);
}
