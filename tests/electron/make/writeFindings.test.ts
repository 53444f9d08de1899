import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { modelFindings } from '../../../core/model/findings.ts';
import { writeFindings } from '../../../electron/make/writeFindings.ts';

const page = path.resolve(import.meta.dirname, '../../../docs/findings.md');

describe('the page of findings', () => {
  it('is what the catalogue says today (else run npm run make:findings)', () => {
    expect(readFileSync(page, 'utf8')).toBe(writeFindings());
  });

  it('has every code once, with its severity', () => {
    const text = writeFindings();
    for (const [code, [severity]] of Object.entries(modelFindings))
      expect(text.split(`\`${code}\` · ${severity}\n`)).toHaveLength(2);
  });
});
