/** Words of entry by keyboard: units, rows, codes, findings beside rows. */
export const entry = {
  kinds: {
    length: 'a length',
    flow: 'a flow',
    volume: 'a volume',
    mass: 'a mass',
    time: 'a time',
  },
  wrongKind: (text: string, kind: string, unit: string) =>
    `“${text}” is ${kind}, and this field is in ${unit}. Write it in ${unit}, or in another unit of that kind.`,
  unknownUnit: (text: string, name: string, unit: string) =>
    `“${text}” is not a number. Write it like 12.5 or 12,5. “${name}” is no unit that is known here; without one it is in ${unit}.`,
  onlyUnit: (text: string, unit: string) =>
    `“${text}” has a unit that is not taken here. Write it in ${unit}.`,
  asTyped: (text: string) => `Typed as ${text}`,
  tools: 'Rows',
  insert: 'Insert',
  insertHint: 'A new row before this one',
  duplicate: 'Duplicate',
  split: 'Split',
  splitAt: 'Split at (m)',
  splitOutside: (text: string, from: string, to: string) =>
    `“${text}” does not lie inside the interval. Write a depth between ${from} and ${to}.`,
  join: 'Join with next',
  fillDown: 'Fill down',
  up: 'Move up',
  down: 'Move down',
  remove: (n: number) => (n === 1 ? 'Delete row' : `Delete ${n} rows`),
  selected: (n: number) => `${n} rows selected`,
  isSelected: 'selected',
  copied: (n: number) => (n === 1 ? '1 row copied' : `${n} rows copied`),
  inserting: 'New row',
  keysShort:
    'Enter goes on; on an empty next row it leaves the table. Ctrl+D fills down, Shift with arrows marks rows.',
  options: (label: string) => `Words for ${label}`,
  code: (code: string) => `code ${code}`,
  nextChapter: (title: string) => `Next chapter: ${title}`,
  samples: 'Samples of the ground',
  makeLog: 'Make the log from the samples',
  replaceLog: (n: number) =>
    n === 1 ? 'The log has one interval. Replace it?' : `The log has ${n} intervals. Replace them?`,
  replace: 'Replace',
  keep: 'Keep the log',
  logMade: (n: number) =>
    n === 1 ? 'The log has one interval now.' : `The log has ${n} intervals now.`,
  why: 'Why it matters',
  todo: 'What to do',
  source: 'Source',
  show: 'Show',
  hiddenFindings: (n: number) => (n === 1 ? 'One more is hidden.' : `${n} more are hidden.`),
  at: (place: string) => `At ${place}`,
};
