export const findings = {
  title: 'Findings',
  none: 'None on what is recorded so far.',
  count: (errors: number, warnings: number, notes: number) =>
    `${errors} wrong, ${warnings} to look at, ${notes} to know`,
  severity: { error: 'Wrong', warning: 'Look again', note: 'Note' },
  go: 'Go to the field',
  source: (source: string) => `Source: ${source}`,
  missing: (n: number) => `Not judged for want of (${n})`,
  judgedBy: (name: string, version: string) => `Judged by: ${name}, ${version}.`,
  general: 'The record names no practice: this is the general one for its way of drilling.',
  unknownPractice: (id: string) =>
    `The record names the practice “${id}”, which is not here: this is the general one for its way of drilling.`,
};
