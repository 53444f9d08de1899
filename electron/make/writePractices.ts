import type { Result } from '../../core/base/result.ts';
import { catalogueOf } from '../../core/practice/catalogue.ts';
import { figureGroupIds, figuresIn, type FigureGroup } from '../../core/practice/figureGroups.ts';
import { figures, type FigureId } from '../../core/practice/figures.ts';
import { holdPractice } from '../../core/practice/holdPractice.ts';
import type { Practice } from '../../core/practice/practice.ts';
import { ruleTitle } from '../../core/practice/ruleTitle.ts';
import { rules } from '../../core/practice/rules/index.ts';
import { sayTitle } from '../../core/practice/saySource.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';
import { priced, type PriceKey } from '../../core/quantities/costOf.ts';
import { quantityWords } from '../../core/quantities/sayQuantity.ts';

const head = `# Practices

Made by \`npm run make:practices\`; do not edit. A practice is a named set of limits that wells are
judged by, and of factors that quantities are reckoned with, each with its source. Two general ones
come with the program. The law of the country, the contract and licensed practice come first: where
they ask for more, make a practice that says so. No practice and no rule declares water safe.

A well is judged by the practice that its record names (\`identity.practice\`, in the chapter
_Well_), else by the general one for its way of drilling: the one for rock where it was drilled by
air or by a hammer down the hole. Every sheet says by which it was judged.

## Making one of your own

The page _Practices_ makes one from another: it takes over everything and changes what you change.
It is kept in the archive and can be exported as a file, and taken into another archive from there.
A file is JSON:

\`\`\`json
EXAMPLE
\`\`\`

| key | what it is |
|---|---|
| \`id\` | letters, digits and hyphens, up to 64; records name it. The ids of the program's own are taken |
| \`version\` | a text; it stands on every sheet. Raise it when a figure changes |
| \`name\`, \`scope\` | a text for all languages, or texts by \`en\`, \`fr\`, \`pt\` |
| \`basedOn\` | id of another practice: what this one leaves out it takes from there, and so on. Without it every figure has to be there |
| \`sources\` | by a key of your own: \`title\`, as a text or by language, and \`mark\`: \`read\` (looked up), \`fromMemory\` (named, not looked up), \`common\` (a custom of the trade) |
| \`figures\` | by the ids below: \`value\` in the unit below, and the key of its \`source\`, here or in a practice that it is based on |
| \`without\` | codes of rules that are not asked for; what a practice switches off stays off in those based on it |
| \`currency\`, \`prices\` | what one of something costs: \`each\`, and \`per\` as people say it. Keys are below |

What is wrong in a file is said with its place and what to write instead. \`borefolio check\` takes the
file of a practice, or the id of one of the program's: \`--practice FILE|ID\`.
`;

/** An invented contract's. */
const example = {
  id: 'lotTwo',
  version: '1.0',
  name: { en: 'Contract, lot 2', fr: 'Contrat, lot 2' },
  scope: 'Wells of lot 2',
  basedOn: 'handDrilled',
  sources: { annex3: { title: 'Contract, annex 3', mark: 'read' } },
  figures: {
    latrineM: { value: 50, source: 'annex3' },
    sanitarySealToM: { value: 5, source: 'annex3' },
  },
  without: ['report.late'],
  currency: 'XOF',
  prices: { cementSack: { each: 5200, per: 'sack' } },
};

export const practiceExample: object = example;

const groupTitles: Readonly<Record<FigureGroup, string>> = {
  annulus: 'Between hole and pipe',
  screen: 'Screen and pack',
  pipe: 'Pipe',
  wellhead: 'Wellhead',
  surroundings: 'Surroundings',
  service: 'Work and handing over',
  quantities: 'Quantities',
};

function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

const held = shippedPractices.map(({ id }) => valueOf(holdPractice(id, shippedPractices)));

/** A figure of a practice with its source; a dash where it is that of the first practice. */
function cellOf(id: FigureId, practice: Practice): string {
  const { value, source, setBy } = practice.figures[id];
  const inherited = practice !== held[0] && setBy !== practice.id;
  return inherited ? '–' : `**${value}** ${sayTitle(source, 'en')}`;
}

function groupTable(group: FigureGroup): string {
  const names = catalogueOf('en').figures;
  const lines = figuresIn(group).map((id) => {
    const unit = figures[id] === '1' ? '' : figures[id];
    const cells = held.map((practice) => cellOf(id, practice));
    return `| ${names[id]} | \`${id}\` | ${unit} | ${cells.join(' | ')} |`;
  });
  const practices = held.map(({ id }) => `\`${id}\``);
  return [
    `### ${groupTitles[group]}`,
    '',
    `| figure | id | unit | ${practices.join(' | ')} |`,
    `|---|---|---|${practices.map(() => '---|').join('')}`,
    ...lines,
  ].join('\n');
}

function aboutTable(): string {
  const lines = held.map(
    ({ id, version, name, scope, basedOn }) =>
      `| \`${id}\` ${version} | ${name.en} | ${scope.en} | ${basedOn.map((one) => `\`${one}\``).join(', ')} |`,
  );
  return ['| practice | name | for which wells | based on |', '|---|---|---|---|', ...lines].join(
    '\n',
  );
}

function ruleTable(): string {
  const lines = rules.map(({ id, figures: compared }) => {
    const ids = compared.map((figure) => `\`${figure}\``).join(', ');
    return `| \`${id}\` | ${ruleTitle(id, 'en')} | ${ids} |`;
  });
  return ['| code | what it finds | figures it compares with |', '|---|---|---|', ...lines].join(
    '\n',
  );
}

function priceTable(): string {
  const { prices } = quantityWords('en');
  const lines = (Object.keys(priced) as PriceKey[]).map((key) => `| \`${key}\` | ${prices[key]} |`);
  return ['| key | for one |', '|---|---|', ...lines].join('\n');
}

/** The page docs/practices.md. */
export function writePractices(): string {
  const parts = [
    head.trimEnd().replace('EXAMPLE', JSON.stringify(example, null, 2)),
    '## The general practices',
    aboutTable(),
    '## Figures',
    'A dash stands where a practice takes the figure from the one that it is based on.',
    ...figureGroupIds.map(groupTable),
    '## Rules',
    'What each says, why and what to do stands in [findings.md](findings.md).',
    ruleTable(),
    '## Prices',
    priceTable(),
  ];
  return `${parts.join('\n\n')}\n`;
}
