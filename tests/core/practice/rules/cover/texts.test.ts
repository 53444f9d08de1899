import { describe, expect, it } from 'vitest';
import { languages } from '../../../../../core/base/language.ts';
import { modelFindings } from '../../../../../core/model/findings.ts';
import { catalogueOf } from '../../../../../core/practice/catalogue.ts';
import { coverCodes } from '../../../../../core/practice/rules/cover/codes.ts';
import { coverRules } from '../../../../../core/practice/rules/cover/index.ts';

const codes = Object.keys(coverCodes) as (keyof typeof coverCodes)[];
const places = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

describe('the texts of the rules of the cover', () => {
  it.each(languages)(
    'name the same values in %s as in English, and each that is given',
    (language) => {
      const english = catalogueOf('en').findings;
      const { findings } = catalogueOf(language);
      for (const code of codes) {
        for (const part of ['title', 'sentence', 'why', 'todo'] as const)
          expect(places(findings[code][part]), `${code} ${part}`).toEqual(
            places(english[code][part]),
          );
        for (const name of coverCodes[code])
          expect(findings[code].sentence, code).toContain(`{${name}}`);
      }
    },
  );

  it('leave no English standing in French and Portuguese', () => {
    for (const language of languages.filter((one) => one !== 'en'))
      for (const code of codes) {
        const said = Object.values(catalogueOf(language).findings[code]).join(' ');
        expect(said.replace(/\{\w+\}/g, ''), code).not.toMatch(
          /\b(the|and|is|of|with|from|hole|depth|string|screen)\b/,
        );
      }
  });

  it('bear codes that the model does not say', () => {
    for (const { id } of coverRules) expect(Object.keys(modelFindings)).not.toContain(id);
  });
});
