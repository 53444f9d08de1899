import type { Language } from '../base/language.ts';
import { catalogueOf } from './catalogue.ts';
import type { RuleCode } from './rules/ruleCodes.ts';

/** What a rule is called in a list of rules: the title of its finding without values. */
export function ruleTitle(id: RuleCode, language: Language): string {
  const { title } = catalogueOf(language).findings[id];
  return title.replace(/\s*:?\s*\{\w+\}/g, '');
}
