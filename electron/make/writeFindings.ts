import { modelFindings, type ModelFindingCode } from '../../core/model/findings.ts';
import { catalogueOf } from '../../core/practice/catalogue.ts';

const head = `# Findings

What Borefolio can say about a well, made from the catalogue by \`npm run make:findings\`; do not
edit. \`{places}\` are filled from the record. An error is a contradiction within the record, a
warning asks for a second look, a note is worth knowing.
`;

function section(code: ModelFindingCode): string {
  const { title, sentence, why, todo } = catalogueOf('en').findings[code];
  const [severity] = modelFindings[code];
  return [
    `### ${title}`,
    `\`${code}\` · ${severity}`,
    sentence,
    `- Why: ${why}`,
    `- What to do: ${todo}`,
  ].join('\n\n');
}

/** The page docs/findings.md, from the English catalogue, in the order of the model's table. */
export function writeFindings(): string {
  const codes = Object.keys(modelFindings) as ModelFindingCode[];
  const groups = [...new Set(codes.map((code) => code.split('.')[0]))];
  const parts = groups.map((group) =>
    [`## ${group}`, ...codes.filter((code) => code.startsWith(`${group}.`)).map(section)].join(
      '\n\n',
    ),
  );
  return `${[head.trimEnd(), ...parts].join('\n\n')}\n`;
}
