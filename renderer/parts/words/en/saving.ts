export const saving = {
  saved: (time: string, revision: number) => `Saved at ${time}, revision ${revision}`,
  waiting: 'Not saved yet',
  saving: 'Saving …',
  notSaved: (sentence: string) => `Not saved: ${sentence}`,
  unread: (n: number) =>
    n === 1
      ? 'One entry cannot be read yet and is not part of the record.'
      : `${n} entries cannot be read yet and are not part of the record.`,
  loadNewer: 'Load the newer revision',
  loadNewerHint: 'What you typed comes back with Undo.',
  keepMine: 'Save mine as a newer revision',
  stale: (revision: number) =>
    `Not saved: revision ${revision} of this well was saved elsewhere after you opened it. Choose which to go on with; nothing that you typed is lost.`,
  again: 'Try again',
  leave: 'Leave without saving',
  stays: 'This window stays open, since not all that was typed is saved.',
  close: 'Close all the same',
  changedElsewhere: (revision: number) =>
    `This well was changed elsewhere: revision ${revision} is newer than the one open here.`,
  troubles: (n: number) => (n === 1 ? 'Saved with one trouble:' : `Saved with ${n} troubles:`),
};
