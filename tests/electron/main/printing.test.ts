import { chmodSync, existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { app, shell } from 'electron';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { desktopPrinting } from '../../../electron/main/printing.ts';
import { forgetPrints } from '../../../electron/service/systemPrinting.ts';
import { freshFolder } from '../archive/sample.ts';

vi.mock('electron', async () => (await import('./standIn.ts')).electronStandIn());

const job = { fileName: 'KA-012 as-built A4 rev 1.pdf', pdf: Buffer.from('%PDF-1.7 trial') };

let programs: string;
let laid: string;

/** Stands in for a program of the print system: the options and the file that it was given. */
function putProgram(name: string, script: string): void {
  const file = path.join(programs, name);
  writeFileSync(file, `#!/bin/sh\n${script}\n`);
  chmodSync(file, 0o755);
}

beforeEach(() => {
  programs = freshFolder();
  laid = freshFolder();
  vi.mocked(app.getPath).mockReturnValue(laid);
  vi.mocked(shell.openPath).mockReset().mockResolvedValue('');
  vi.stubEnv('PATH', `${programs}${path.delimiter}/usr/bin${path.delimiter}/bin`);
});

afterEach(() => {
  forgetPrints();
  vi.unstubAllEnvs();
});

describe('printing from the desktop, with stand-ins for the print system and for Electron', () => {
  it('knows the printers and the usual one among them', async () => {
    putProgram(
      'lpstat',
      '[ "$1" = -e ] && printf "Office\\nSite_A3\\n-odd\\n" || echo "system default destination: Site_A3"',
    );
    expect(await desktopPrinting.printers()).toEqual([
      { name: 'Office', usual: false },
      { name: 'Site_A3', usual: true },
    ]);
  });

  it('knows none where there is no print system', async () => {
    vi.stubEnv('PATH', programs);
    expect(await desktopPrinting.printers()).toEqual([]);
  });

  it('hands the PDF over at true size, and keeps no copy of it', async () => {
    const seen = path.join(programs, 'seen');
    putProgram(
      'lp',
      `for word in "$@"; do echo "$word" >> '${seen}'; last=$word; done; cat "$last" >> '${seen}'`,
    );
    expect(await desktopPrinting.print(job, 'Office')).toEqual({ ok: true, value: null });
    const [d, printer, t, title, o, scaling, end, file, content] = readFileSync(seen, 'utf8').split(
      '\n',
    );
    expect([d, printer, t, title]).toEqual(['-d', 'Office', '-t', job.fileName]);
    expect([o, scaling, end]).toEqual(['-o', 'print-scaling=none', '--']);
    expect(path.basename(file!)).toBe(job.fileName);
    expect(content).toBe('%PDF-1.7 trial');
    expect(readdirSync(laid)).toEqual([]);
  });

  it('says why the print system did not take it', async () => {
    putProgram('lp', 'echo "lp: The printer is not accepting jobs." >&2; exit 1');
    expect(await desktopPrinting.print(job, 'Office')).toMatchObject({
      error: { code: 'printerRefused', sentence: expect.stringContaining('not accepting jobs') },
    });
    expect(readdirSync(laid)).toEqual([]);
  });

  it('shows it in the system’s viewer, where it lies for this person alone until the end', async () => {
    expect(await desktopPrinting.show(job)).toEqual({ ok: true, value: null });
    const [[file]] = vi.mocked(shell.openPath).mock.calls as [[string]];
    expect(file.startsWith(laid + path.sep)).toBe(true);
    expect(readFileSync(file, 'utf8')).toBe('%PDF-1.7 trial');
    expect(statSync(file).mode & 0o777).toBe(0o600);
    forgetPrints();
    expect(existsSync(file)).toBe(false);
  });

  it('names the file within its own folder, whatever it was called', async () => {
    await desktopPrinting.show({ ...job, fileName: '../../-rf:x.pdf' });
    const [[file]] = vi.mocked(shell.openPath).mock.calls as [[string]];
    expect(path.basename(file)).toBe('rf-x.pdf');
    expect(path.dirname(path.dirname(file))).toBe(laid);
  });

  it('says that no viewer showed it', async () => {
    vi.mocked(shell.openPath).mockResolvedValue('No application is registered');
    expect(await desktopPrinting.show(job)).toMatchObject({ error: { code: 'noViewer' } });
    expect(readdirSync(laid)).toEqual([]);
  });
});
