import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { nameOf } from '../../../electron/make/lockedPackages.ts';
import { noticeSources } from '../../../electron/make/noticeSources.ts';
import { writeNotices } from '../../../electron/make/writeNotices.ts';

const top = path.resolve(import.meta.dirname, '../../..');
const sources = noticeSources(top);
const notices = readFileSync(path.join(top, 'assets/NOTICES.md'), 'utf8');

describe('assets/NOTICES.md', () => {
  it('is what `npm run make:notices` writes from the packages of today', () => {
    expect(notices).toBe(writeNotices(sources));
  });

  it('names every package with its version, and every font’s licence', () => {
    for (const [folder, { version }] of Object.entries(sources.locked))
      if (folder !== '') expect(notices).toContain(`${nameOf(folder)} ${version}`);
    for (const file of Object.keys(sources.fontLicences)) expect(notices).toContain(file);
  });

  it('says so where a package states no licence', () => {
    const locked = { 'node_modules/bare': { version: '1.0.0' } };
    const text = writeNotices({ locked, licenceText: () => undefined, fontLicences: {} });
    expect(text).toContain('### bare 1.0.0\n\nno licence stated');
  });
});
