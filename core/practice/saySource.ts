import type { Finding } from '../base/finding.ts';
import type { Language } from '../base/language.ts';
import { catalogueOf } from './catalogue.ts';
import type { FigureId } from './figures.ts';
import type { Practice } from './practice.ts';
import { rules } from './rules/index.ts';

/** The figures of the practice that a finding compares with; none for what the record alone says. */
export function figuresBehind({ code }: Finding): readonly FigureId[] {
  return rules.find(({ id }) => id === code)?.figures ?? [];
}

/**
 * Where a finding comes from, in words: the sources of the figures that its rule compares with,
 * or the record itself.
 */
export function saySource(finding: Finding, practice: Practice, language: Language): string {
  const { sources } = catalogueOf(language);
  const behind = figuresBehind(finding).map((id) => {
    const { title, mark } = practice.figures[id].source;
    return mark === 'fromMemory' ? `${title[language]} (${sources.fromMemory})` : title[language];
  });
  return behind.length === 0 ? sources.record : [...new Set(behind)].join('; ');
}
