export const saving = {
  revised: (time: string, revision: number) => `Revision ${revision} saved at ${time}`,
  kept: (time: string) => `On disk at ${time}`,
  ahead: (time: string, revision: number) => `On disk at ${time}, later than revision ${revision}`,
  waiting: 'Not on disk yet',
  saving: 'Writing to disk …',
  refused: (sentence: string) => `Not on disk: ${sentence}`,
  reason: 'Reason for the next revision, if any',
  reasonHint: 'It stands beside the revision that the next saving makes; Enter saves',
  unread: (n: number) =>
    n === 1
      ? 'One entry cannot be read yet. It is kept, and is not part of the record.'
      : `${n} entries cannot be read yet. They are kept, and are not part of the record.`,
  parted:
    'Another window changed the same place. Choose whose work stands there; the other comes back with Undo.',
  takeTheirs: 'Take the other window’s',
  keepMine: 'Keep mine',
  again: 'Try again',
  leave: 'Leave without it',
  stays: 'This window stays open, since not all that was typed is on disk.',
  close: 'Close all the same',
  troubles: (n: number) =>
    n === 1 ? 'One trouble in the record:' : `${n} troubles in the record:`,
  paperIsOlder: (revision: number) =>
    `It shows revision ${revision}, without what was typed later.`,
};
