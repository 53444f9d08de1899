import { modelFindings, type ModelFindingCode } from '../../core/model/findings.ts';
import { catalogueOf } from '../../core/practice/catalogue.ts';
import type { FindingCode } from '../../core/practice/catalogue/texts.ts';
import { figures } from '../../core/practice/figures.ts';
import { holdPractice } from '../../core/practice/holdPractice.ts';
import type { Practice } from '../../core/practice/practice.ts';
import { ruleTitle } from '../../core/practice/ruleTitle.ts';
import { rules } from '../../core/practice/rules/index.ts';
import type { Rule } from '../../core/practice/rules/rule.ts';
import { isOfPractice, sayTitle } from '../../core/practice/saySource.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';

const head = `# Findings

What Borefolio can say about a well, made from the catalogue by \`npm run make:findings\`; do not
edit. \`{places}\` are filled from the record. An error is a contradiction within the record or a
grave fault, a warning asks for a second look, a note is worth knowing.

The first part is what the record says of itself. The second is what the [practice](practices.md)
that a well is judged by would have otherwise: each rule stands with the figures that it compares
with, as the general practices have them, and where they come from. A rule that lacks a field of the
record in order to judge says which.
`;

function texts(code: FindingCode): string[] {
  const { sentence, why, todo } = catalogueOf('en').findings[code];
  return [sentence, `- Why: ${why}`, `- What to do: ${todo}`];
}

function section(code: ModelFindingCode): string {
  const { title } = catalogueOf('en').findings[code];
  const [severity] = modelFindings[code];
  return [`### ${title}`, `\`${code}\` · ${severity}`, ...texts(code)].join('\n\n');
}

function held(): readonly Practice[] {
  return shippedPractices.map(({ id }) => {
    const practice = holdPractice(id, shippedPractices);
    if (!practice.ok) throw new Error(practice.error.sentence);
    return practice.value;
  });
}

/** The figures of a rule: the first practice's, and the others' where they have it otherwise. */
function figureLines({ id: code, figures: ids }: Rule, practices: readonly Practice[]): string[] {
  const names = catalogueOf('en').figures;
  const { sources } = catalogueOf('en');
  if (ids.length === 0)
    return [`- Source: ${isOfPractice({ code }) ? sources.common : sources.record}`];
  return ids.map((id) => {
    const unit = figures[id] === '1' ? '' : ` ${figures[id]}`;
    const [first, ...others] = practices.filter(
      (practice, at) => at === 0 || practice.figures[id].setBy === practice.id,
    );
    const said = ({ figures: all }: Practice) =>
      `${all[id].value}${unit} (${sayTitle(all[id].source, 'en')})`;
    const otherwise = others.map((practice) => `; \`${practice.id}\`: ${said(practice)}`).join('');
    return `- \`${id}\`, ${names[id]}: ${said(first!)}${otherwise}`;
  });
}

function ruleSection(rule: Rule, practices: readonly Practice[]): string {
  return [
    `### ${ruleTitle(rule.id, 'en')}`,
    `\`${rule.id}\``,
    ...texts(rule.id),
    figureLines(rule, practices).join('\n'),
  ].join('\n\n');
}

/** The page docs/findings.md, from the English catalogue, in the order of the model and the rules. */
export function writeFindings(): string {
  const codes = Object.keys(modelFindings) as ModelFindingCode[];
  const groups = [...new Set(codes.map((code) => code.split('.')[0]))];
  const parts = groups.map((group) =>
    [`## ${group}`, ...codes.filter((code) => code.startsWith(`${group}.`)).map(section)].join(
      '\n\n',
    ),
  );
  const practices = held();
  const ruled = ['## Rules', ...rules.map((rule) => ruleSection(rule, practices))];
  return `${[head.trimEnd(), ...parts, ...ruled].join('\n\n')}\n`;
}
