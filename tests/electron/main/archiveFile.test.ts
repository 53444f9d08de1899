import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { app } from 'electron';
import { describe, expect, it, vi } from 'vitest';
import {
  archiveInArguments,
  noteArchive,
  usualArchive,
} from '../../../electron/main/archiveFile.ts';
import { freshFolder } from '../archive/sample.ts';

vi.mock('electron', async () => (await import('./standIn.ts')).electronStandIn());

describe('which archive to open, with a stand-in for Electron’s folders', () => {
  it('is the one that the command line names', () => {
    expect(archiveInArguments(['.', '--flag', 'a/Kalo.borefolio'], '/home')).toBe(
      path.resolve('/home/a/Kalo.borefolio'),
    );
    expect(archiveInArguments(['.', '--log=x.borefolio'], '/home')).toBeUndefined();
  });

  it('is the one of the last time while it is there, else a new one among the documents', async () => {
    const folder = freshFolder();
    vi.mocked(app.getPath).mockReturnValue(folder);
    expect(usualArchive()).toBe(path.join(folder, 'Wells.borefolio'));
    const last = path.join(folder, 'Kalo.borefolio');
    await noteArchive(last);
    expect(usualArchive()).toBe(path.join(folder, 'Wells.borefolio'));
    writeFileSync(last, '');
    expect(usualArchive()).toBe(last);
  });
});
