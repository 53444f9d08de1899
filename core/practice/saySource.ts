import type { Finding } from '../base/finding.ts';
import type { Language } from '../base/language.ts';
import { catalogueOf } from './catalogue.ts';
import type { FigureId } from './figures.ts';
import type { Practice, Source } from './practice.ts';
import { rules } from './rules/index.ts';
import type { Rule } from './rules/rule.ts';

/** Rules that compare what the record says with what else it says. */
const ofRecord: readonly Rule['id'][] = ['dates.order'];

/** Rules that compare with guideline values, and with limits of kinds of pump. */
const ofGuidelines: readonly Rule['id'][] = ['quality.aboveHealth', 'quality.untested'];
const ofPumpKinds: readonly Rule['id'][] = ['suits.lift', 'suits.casing', 'suits.flow'];

function ruleOf({ code }: Pick<Finding, 'code'>): Rule | undefined {
  return rules.find(({ id }) => id === code);
}

/** The figures of the practice that a finding compares with; none for what the record alone says. */
export function figuresBehind(finding: Finding): readonly FigureId[] {
  return ruleOf(finding)?.figures ?? [];
}

/** Whether a practice asks for it; else the record contradicts itself or leaves something out. */
export function isOfPractice(finding: Pick<Finding, 'code'>): boolean {
  const rule = ruleOf(finding);
  return rule !== undefined && !ofRecord.includes(rule.id);
}

/** A source in words, and whether nobody looked it up. */
export function sayTitle({ title, mark }: Source, language: Language): string {
  const { fromMemory } = catalogueOf(language).sources;
  return mark === 'fromMemory' ? `${title[language]} (${fromMemory})` : title[language];
}

/**
 * Where a finding comes from, in words: the sources of the figures that its rule compares with,
 * guideline values, limits of a kind of pump, the practice of the trade where it compares with
 * none, or the record itself.
 */
export function saySource(finding: Finding, practice: Practice, language: Language): string {
  const { sources } = catalogueOf(language);
  if (!isOfPractice(finding)) return sources.record;
  const { id } = ruleOf(finding) ?? {};
  if (id && ofGuidelines.includes(id)) return sources.guidelines;
  if (id && ofPumpKinds.includes(id)) return sources.pumpKinds;
  const behind = figuresBehind(finding).map((id) =>
    sayTitle(practice.figures[id].source, language),
  );
  return behind.length === 0 ? sources.common : [...new Set(behind)].join('; ');
}
