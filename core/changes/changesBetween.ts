import type { Language } from '../base/language.ts';
import { sheetWordsIn } from '../drawing/words/languages.ts';
import { resolveWell } from '../model/resolveWell.ts';
import type { WellRecord } from '../record/schema.ts';
import { chapters, type Chapter } from './chapters.ts';
import type { Entry, Told } from './entry.ts';
import { headworksEntries, paperEntries, pumpEntries } from './entries/surface.ts';
import {
  developmentEntries,
  disinfectionEntries,
  levelEntries,
  qualityEntries,
  strikeEntries,
  testEntries,
} from './entries/water.ts';
import { annulusEntries, boreEntries, casingEntries, groundEntries } from './entries/well.ts';
import { identityEntries, siteEntries } from './entries/wellAndSite.ts';
import { changeWordsIn } from './words/languages.ts';

/** One difference between two records. */
export type Change =
  | {
      readonly kind: 'added';
      readonly chapter: Chapter;
      readonly what: string;
      readonly now: string;
    }
  | {
      readonly kind: 'removed';
      readonly chapter: Chapter;
      readonly what: string;
      readonly before: string;
    }
  | {
      readonly kind: 'changed';
      readonly chapter: Chapter;
      readonly what: string;
      readonly now: string;
      readonly before: string;
    }
  /** Something of a chapter that has no words of its own. */
  | { readonly kind: 'other'; readonly chapter: Chapter };

/** In the order in which a well is made. */
const readers: readonly ((told: Told) => Entry[])[] = [
  identityEntries,
  siteEntries,
  boreEntries,
  groundEntries,
  casingEntries,
  annulusEntries,
  headworksEntries,
  levelEntries,
  strikeEntries,
  developmentEntries,
  testEntries,
  qualityEntries,
  disinfectionEntries,
  pumpEntries,
  paperEntries,
];

/** Entries by chapter and key; the second of one key is told from the first. */
function entriesOf(record: WellRecord, language: Language): Map<string, Entry> {
  const told: Told = {
    record,
    model: resolveWell(record),
    sheet: sheetWordsIn(language),
    words: changeWordsIn(language),
  };
  const entries = new Map<string, Entry>();
  for (const one of readers.flatMap((read) => read(told))) {
    let key = `${one.chapter} ${one.key}`;
    while (entries.has(key)) key += ' again';
    entries.set(key, one);
  }
  return entries;
}

const joined = (parts: readonly string[]) => parts.filter((part) => part !== '').join(', ');

/** Only the parts that differ; a part that is not known is a dash. */
function differing(parts: readonly string[], others: readonly string[]): string {
  return parts
    .filter((part, at) => part !== others[at])
    .map((part) => (part === '' ? '–' : part))
    .join(', ');
}

function changeOf(before: Entry | undefined, now: Entry | undefined): Change[] {
  if (now && !before)
    return [{ kind: 'added', chapter: now.chapter, what: now.what, now: joined(now.parts) }];
  if (before && !now) {
    const { chapter, what, parts } = before;
    return [{ kind: 'removed', chapter, what, before: joined(parts) }];
  }
  if (!before || !now || joined(before.parts) === joined(now.parts)) return [];
  return [
    {
      kind: 'changed',
      chapter: now.chapter,
      what: now.what,
      now: differing(now.parts, before.parts),
      before: differing(before.parts, now.parts),
    },
  ];
}

/** Chapters that differ though none of their entries does. */
function others(before: WellRecord, now: WellRecord, told: readonly Change[]): Change[] {
  const silent = chapters.filter(
    (chapter) =>
      JSON.stringify(before[chapter]) !== JSON.stringify(now[chapter]) &&
      !told.some((one) => one.chapter === chapter),
  );
  return silent.map((chapter) => ({ kind: 'other', chapter }));
}

/**
 * What a record says otherwise than the one before it, chapter by chapter in the record's
 * order. Depths are metres below ground, resolved from both records.
 */
export function changesBetween(before: WellRecord, now: WellRecord, language: Language): Change[] {
  const [had, has] = [entriesOf(before, language), entriesOf(now, language)];
  const keys = [...has.keys(), ...[...had.keys()].filter((key) => !has.has(key))];
  const changes = keys.flatMap((key) => changeOf(had.get(key), has.get(key)));
  const all = [...changes, ...others(before, now, changes)];
  return all.toSorted((a, b) => chapters.indexOf(a.chapter) - chapters.indexOf(b.chapter));
}
