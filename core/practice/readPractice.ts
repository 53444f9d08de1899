import { z } from 'zod';
import { languages } from '../base/language.ts';
import { known } from '../base/known.ts';
import { parsedJson, refusedFor, type FileFault } from '../base/fileFaults.ts';
import { writePath, type PathStep } from '../base/recordPath.ts';
import { ok, refused, type Result } from '../base/result.ts';
import { nearest } from '../record/spelling.ts';
import { figures, type FigureId, type FigureUnit } from './figures.ts';
import type { InLanguages, PracticeFile } from './practice.ts';
import { ruleCodes } from './rules/ruleCodes.ts';

const figureIds = Object.keys(figures) as FigureId[];
const ruleIds = Object.keys(ruleCodes);

/** Units of figures that something is divided by. */
const divisors: readonly FigureUnit[] = ['kg', 'kg/l', 'MPa'];

const line = (says: string) => z.string(says).trim().min(1, says).max(500, says);

/** A text stands for itself in every language; so does one that lacks some of them. */
const words = (what: string) => {
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
};

const idSays =
  'write an id of letters, digits and hyphens, up to 64, as in “ourProgramme”; records name it';
const practiceId = z.string(idSays).regex(/^[A-Za-z0-9-]{1,64}$/, idSays);

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

function figureOf(id: FigureId) {
  const unit = figures[id];
  const says = `write a number from 0 up${unit === '1' ? '' : ` in ${unit}`}`;
  const number = z.number(says).min(0, says);
  const most = unit === '%' ? number.max(100, 'write a share from 0 to 100 %') : number;
  const value = divisors.includes(unit) ? most.gt(0, `write a number above 0 in ${unit}`) : most;
  return z
    .strictObject(
      { value, source: line('name the key of a source among “sources”') },
      'write a figure as an object with value and source',
    )
    .exactOptional();
}

const price = z.strictObject(
  {
    each: z.number('write a price as a number from 0 up').min(0, 'a price is never below 0'),
    per: line('write of what one is that price, as in sack or m'),
  },
  'write a price as an object with each and per',
);

const practiceFile = z
  .strictObject(
    {
      id: practiceId,
      version: line('write the version as a text, as in “1.0”'),
      name: words('the name'),
      scope: words('for which wells it is meant'),
      basedOn: practiceId.exactOptional(),
      sources: z.record(z.string(), source, 'write the sources as an object').default({}),
      figures: z
        .strictObject(
          Object.fromEntries(figureIds.map((id) => [id, figureOf(id)])),
          'write the figures as an object, by their ids',
        )
        .default({}),
      without: z
        .array(
          z
            .string('write rules by their codes')
            .refine((rule) => ruleIds.includes(rule), 'there is no such rule'),
          'write a list of codes of rules',
        )
        .exactOptional(),
      currency: line('write the currency as a text').exactOptional(),
      prices: z.record(z.string(), price, 'write the prices as an object').exactOptional(),
    },
    'a practice is an object with id, version, name and scope',
  )
  .transform((file) => file as PracticeFile);

function near(written: string, ids: readonly string[]): string {
  const meant = nearest(written, ids);
  return meant === undefined ? '' : `; is ${meant} meant?`;
}

/** Every fault with its place and the remedy. */
function faultsOf(issue: z.core.$ZodIssue, written: unknown): FileFault[] {
  const path = issue.path as PathStep[];
  const [top, at] = path;
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => {
      const ids = top === 'figures' ? figureIds : Object.keys(practiceFile.in.shape);
      const what = top === 'figures' && path.length === 1 ? 'figure' : 'key';
      return {
        place: writePath([...path, key]),
        says: `there is no such ${what}${near(key, ids)}`,
      };
    });
  const rule = top === 'without' && (written as PracticeFile).without?.[Number(at)];
  const hint = typeof rule === 'string' ? ` as “${rule}”${near(rule, ruleIds)}` : '';
  return [{ place: writePath(path), says: issue.message + hint }];
}

/**
 * Reads a practice from parsed JSON. Refused with every fault, each with its place and what to
 * write instead; unknown figures and rules are named.
 */
export function readPractice(written: unknown): Result<PracticeFile> {
  const read = practiceFile.safeParse(written);
  if (read.success) return ok(known({ ...read.data }) as PracticeFile);
  const faults = read.error.issues.flatMap((issue) => faultsOf(issue, written));
  return refusedFor('practiceUnread', 'This is no practice yet.', faults);
}

const notJson = refused(
  'practiceUnread',
  'This is not JSON, or not all of it. Choose a practice that was written to a file as a whole.',
);

/** Reads a practice from the text of its file. */
export function readPracticeText(text: string): Result<PracticeFile> {
  const written = parsedJson(text, notJson);
  return written.ok ? readPractice(written.value) : written;
}
