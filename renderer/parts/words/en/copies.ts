export const copies = {
  title: 'Copies',
  backups: 'Backups',
  about:
    'Once a day a copy of the archive is put into a folder beside it and read back; the newest five are kept. Those that you make stay until you delete them.',
  make: 'Make a backup now',
  noBackups: 'There is no backup yet.',
  beside: 'Other archives in this folder',
  aboutBeside:
    'To take in another archive, put its file into the folder of this one. It stays as it is.',
  noBeside: 'There is no other archive in this folder.',
  columns: { file: 'File', made: 'Written', wells: 'Wells', size: 'Size', entry: 'Entry' },
  unreadable: 'cannot be read',
  megabytes: (figure: string) => `${figure} MB`,
  restore: 'Put back',
  look: 'Take in …',
  working: 'At work …',
  made: (file: string) => `The backup ${file} was made and read back whole.`,
  restored: (file: string, aside: string) =>
    `The archive holds again what ${file} holds. What it held before is put aside as ${aside}.`,
  askTitle: 'Put this backup back?',
  ask: (file: string, moment: string, wells: string) =>
    `The archive will hold what ${file} holds: ${wells} wells, as of ${moment}.`,
  askAside:
    'What it holds now is put aside first, as a backup of its own. To get single wells back, take the backup in instead.',
  keep: 'Leave it as it is',
  toCopies: 'Back to the copies',
  takeTitle: (file: string) => `Take in ${file}`,
  known: (known: number, binned: number) =>
    `Of ${known} of its wells everything is here already; ${binned} lie in its bin and stay there.`,
  kinds: {
    new: (n: number) => (n === 1 ? '1 new well' : `${n} new wells`),
    later: (n: number) => (n === 1 ? '1 well went on there' : `${n} wells went on there`),
    typing: (n: number) =>
      n === 1
        ? '1 well waits: something typed here is in no revision'
        : `${n} wells wait: something typed here is in no revision`,
    apart: (n: number) => (n === 1 ? '1 well went on in both' : `${n} wells went on in both`),
    alike: (n: number) =>
      n === 1
        ? '1 well has the number and place of another one here'
        : `${n} wells have the number and place of others here`,
  },
  choices: {
    ours: 'One well; the record here stands last',
    theirs: 'One well; the other record stands last',
    two: 'Two wells',
  },
  compare: 'Side by side',
  here: (revision: number, moment: string) => `Here: revision ${revision}, ${moment}`,
  there: (revision: number, moment: string) => `There: revision ${revision}, ${moment}`,
  noDifference: 'The records say the same.',
  more: (n: string) => `and ${n} more`,
  waiting: (n: number) =>
    n === 1
      ? '1 well has no choice yet and will be left.'
      : `${n} wells have no choice yet and will be left.`,
  nothingLost: 'Whatever is chosen, all records of both stay among the revisions.',
  take: 'Take in',
  taken: (added: number, continued: number, joined: number) =>
    `Added: ${added}. Continued: ${continued}. Joined: ${joined}.`,
  left: (n: number) => (n === 1 ? '1 well was left.' : `${n} wells were left.`),
  differing: (ids: string) => `These stand otherwise there, and what is here was left: ${ids}.`,
};
