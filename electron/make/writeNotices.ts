import { nameOf, splitShipped, type Locked } from './lockedPackages.ts';

/** Development packages whose code is in the page. */
const bundled = ['svelte', 'd3'];

export interface NoticeSources {
  readonly locked: Locked;
  /** Text of a package's licence file; absent where the package carries none. */
  readonly licenceText: (folder: string) => string | undefined;
  /** Licence texts of the fonts by file name. */
  readonly fontLicences: Readonly<Record<string, string>>;
}

const intro = `# Notices

Made by \`npm run make:notices\`. Borefolio itself is under the MIT licence (LICENSE). What it ships
and what it is made with is the work of many others, under the licences below. A packaged desktop
program also holds Electron's runtime, which brings its own licence files.
`;

/** A licence text as Markdown that shows it letter by letter. */
function quoted(text: string): string {
  const lines = text.replace(/\r/g, '').trim().split('\n');
  return lines.map((line) => `    ${line}`.trimEnd()).join('\n');
}

function fontPart(licences: NoticeSources['fontLicences']): string {
  const texts = Object.entries(licences).map(([file, text]) => `### ${file}\n\n${quoted(text)}\n`);
  return `## Fonts\n\nfonts/README.md says which file is of which family.\n\n${texts.join('\n')}`;
}

function shippedPart({ locked, licenceText }: NoticeSources, folders: readonly string[]): string {
  const parts = folders.map((folder) => {
    const { version, license = 'no licence stated' } = locked[folder]!;
    const text = licenceText(folder);
    const head = `### ${nameOf(folder)} ${version}\n\n${license}\n`;
    return text === undefined ? head : `${head}\n${quoted(text)}\n`;
  });
  return `## Packages that ship with the program\n\n${parts.join('\n')}`;
}

function developmentPart(locked: Locked, folders: readonly string[]): string {
  const byLicence = new Map<string, Set<string>>();
  for (const folder of folders) {
    const { license = 'no licence stated', version } = locked[folder]!;
    const names = byLicence.get(license) ?? new Set();
    byLicence.set(license, names.add(`${nameOf(folder)} ${version}`));
  }
  const parts = [...byLicence]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([licence, names]) => `### ${licence}\n\n${[...names].sort().join(', ')}\n`);
  return `## Packages that only make and test it\n\n${parts.join('\n')}`;
}

/** The notices as Markdown: every font's and every package's licence. */
export function writeNotices(sources: NoticeSources): string {
  const { shipped, development } = splitShipped(sources.locked, bundled);
  return [
    intro,
    fontPart(sources.fontLicences),
    shippedPart(sources, shipped),
    developmentPart(sources.locked, development),
  ].join('\n');
}
