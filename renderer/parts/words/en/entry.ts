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
  keysTitle: 'Keys',
  keys: 'Enter goes on and Shift+Enter back; on a next row with nothing typed in it Enter leads to the next table or form, and from the last one to the next chapter. Ctrl+arrow down or up goes there at once, Alt+1 to 7 and Alt+Page Down or Up turn chapters. Shift+arrow marks rows, Ctrl+C, X and V copy, cut and paste them, also from and to a spreadsheet. Ctrl+D fills down, Insert puts a row before this one, Ctrl+Shift+D duplicates, Alt+S splits an interval, Alt+J joins it with the next, Alt+arrow moves, Ctrl+Delete deletes. Ctrl+Enter opens the rest of the row, Escape leads back.',
  options: (label: string) => `Words for ${label}`,
  code: (code: string) => `code ${code}`,
  samples: 'Samples of the ground',
  makeLog: 'Make the log from the samples',
  replaceLog: (n: number) =>
    n === 1 ? 'The log has one interval. Replace it?' : `The log has ${n} intervals. Replace them?`,
  replace: 'Replace',
  keep: 'Keep the log',
  logMade: (n: number) =>
    n === 1 ? 'The log has one interval now.' : `The log has ${n} intervals now.`,
  why: 'Why it matters',
  show: 'Show',
  hiddenFindings: (n: number) => (n === 1 ? 'One more is hidden.' : `${n} more are hidden.`),
};
