export const findings = {
  title: 'Findings',
  none: 'None on what is recorded so far.',
  count: (errors: number, warnings: number, notes: number) =>
    `${errors} wrong, ${warnings} to look at, ${notes} to know`,
  severity: { error: 'Wrong', warning: 'Look again', note: 'Note' },
  go: 'Go to the field',
};
