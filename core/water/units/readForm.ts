import { substances } from './substances.ts';

/** Names of forms that are not their formula: nitrogen told as such, of what compound so ever. */
const otherNames: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    ['no3', 'no2', 'nh4', 'nh3'].flatMap((compound) => [
      [`${compound}-n`, 'N'],
      [`${compound}n`, 'N'],
      [`n-${compound}`, 'N'],
    ]),
  ),
  'po4-p': 'P',
  'p-po4': 'P',
  'so4-s': 'S',
  nitrogen: 'N',
  azote: 'N',
  azoto: 'N',
  nitrogénio: 'N',
  nitrogênio: 'N',
};

const formulas = new Map(
  Object.values(substances).flatMap((one) =>
    Object.keys(one?.forms ?? {}).map((form) => [form.toLowerCase(), form] as const),
  ),
);

function named(form: string): string | undefined {
  return otherNames[form] ?? formulas.get(form);
}

/**
 * A form as people write it: `NO3-N`, `NO₃⁻`, `as N`, `Ca2+`. Undefined where it is none that is
 * known.
 */
export function readForm(written: string): string | undefined {
  const form = written
    .normalize('NFKC')
    .toLowerCase()
    .replace(/^\s*(as|en|como|exprimé en|expresso em|em)\s+/, '')
    .replace(/[\s()]/g, '')
    .replace(/−/g, '-');
  return named(form) ?? named(form.replace(/[+-]+$/, '')) ?? named(form.replace(/\d?[+-]+$/, ''));
}
