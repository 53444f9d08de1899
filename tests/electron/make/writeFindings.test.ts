import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { modelFindings } from '../../../core/model/findings.ts';
import { rules } from '../../../core/practice/rules/index.ts';
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

  it('has every rule once, with the figures that it compares with', () => {
    const text = writeFindings();
    for (const { id, figures } of rules) {
      const [, part = '', ...more] = text.split(`\n\`${id}\`\n`);
      expect(more, id).toEqual([]);
      const [own = ''] = part.split('\n### ');
      for (const figure of figures) expect(own, id).toContain(`- \`${figure}\`, `);
    }
  });
});
