import { z } from 'zod';
import { languages } from '../../base/language.ts';
import type { InLanguages } from '../../practice/practice.ts';
import { readForm } from '../units/readForm.ts';
import { readUnit } from '../units/readUnit.ts';
import { bandIds, bases, conditions, purposes } from './guidelineSet.ts';

const line = (says: string) => z.string(says).trim().min(1, says).max(500, says);

/** A text stands for itself in every language; so does one that lacks some of them. */
function words(what: string) {
  const says = `write ${what} as a text, or as texts by en, fr and pt`;
  const one = line(says);
  const each = z.strictObject(
    { en: one.exactOptional(), fr: one.exactOptional(), pt: one.exactOptional() },
    says,
  );
  return z
    .union([one, each], says)
    .refine((said) => typeof said === 'string' || Object.keys(said).length > 0, says)
    .transform((said): InLanguages => {
      const by = typeof said === 'string' ? { en: said } : said;
      const [first = ''] = languages.flatMap((language) => by[language] ?? []);
      return { en: by.en ?? first, fr: by.fr ?? first, pt: by.pt ?? first };
    });
}

const idSays = 'write an id of letters, digits and hyphens, up to 64, as in “ourDecree”';
const id = z.string(idSays).regex(/^[A-Za-z0-9-]{1,64}$/, idSays);

const source = z.strictObject(
  {
    title: words('where the figure comes from'),
    mark: z.enum(
      ['read', 'fromMemory', 'common'],
      'write read (it was looked up), fromMemory (it was not) or common (a custom of the trade)',
    ),
  },
  'write a source as an object with title and mark',
);

const sourceKey = line('name the key of a source among “sources”');

const unitSays = 'write a unit as laboratories do, as in mg/l, NTU, CFU/100 ml or 1';
const unit = z.string(unitSays).refine((said) => readUnit(said) !== undefined, unitSays);

const formSays = 'write a form of the substance, as in NO3, N or CaCO3';
const form = z
  .string(formSays)
  .refine((said) => readForm(said) !== undefined, formSays)
  .transform((said) => readForm(said) ?? said);

const oneOf = <const T extends readonly [string, ...string[]]>(list: T) =>
  z.enum(list, `write one of ${list.join(', ')}`);

const number = z.number('write a number').min(0, 'write a number from 0 up');

const value = z.strictObject(
  {
    bound: oneOf(['most', 'least']),
    value: number,
    unit: unit.exactOptional(),
    as: form.exactOptional(),
    enoughBelow: number.exactOptional(),
    basis: oneOf(bases),
    purpose: oneOf(purposes).exactOptional(),
    when: oneOf(conditions).exactOptional(),
    source: sourceKey,
  },
  'write a value as an object with bound, value, basis and source',
);

const bands = z.strictObject(
  {
    source: sourceKey,
    list: z
      .array(z.strictObject({ id: oneOf(bandIds), from: number }), 'write a list of bands')
      .refine(
        (list) => list.every(({ from }, at) => at === 0 || from > list[at - 1]!.from),
        'write the bands from the lowest up',
      ),
  },
  'write bands as an object with source and list',
);

const parameter = z.strictObject(
  {
    names: words('the name').exactOptional(),
    aliases: z.array(line('write an alias as a text'), 'write a list of aliases').exactOptional(),
    unit: unit.exactOptional(),
    as: form.exactOptional(),
    values: z.record(id, value, 'write the values as an object, by keys').exactOptional(),
    bands: bands.exactOptional(),
    beforeHandover: z
      .strictObject(
        { source: sourceKey, instead: z.array(id).exactOptional() },
        'write it as an object with source',
      )
      .exactOptional(),
  },
  'write a parameter as an object',
);

/** The file of a set of guideline values. */
export const guidelineSchema = z.strictObject(
  {
    id,
    version: line('write the version as a text, as in “1.0”'),
    name: words('the name'),
    edition: line('write the edition as a text').exactOptional(),
    basedOn: id.exactOptional(),
    sources: z.record(z.string(), source, 'write the sources as an object').default({}),
    parameters: z.record(id, parameter, 'write the parameters as an object').default({}),
    without: z
      .array(
        line('write parameters, or values as in iron.stains'),
        'write a list of what the set does not ask for',
      )
      .exactOptional(),
  },
  'a set is an object with id, version, name and parameters',
);
