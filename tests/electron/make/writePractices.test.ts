import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { admitPractice } from '../../../core/practice/admitPractice.ts';
import { figures } from '../../../core/practice/figures.ts';
import { readPractice } from '../../../core/practice/readPractice.ts';
import { rules } from '../../../core/practice/rules/index.ts';
import { practiceExample, writePractices } from '../../../electron/make/writePractices.ts';

const page = path.resolve(import.meta.dirname, '../../../docs/practices.md');

describe('the page of practices', () => {
  it('is what the practices say today (else run npm run make:practices)', () => {
    expect(readFileSync(page, 'utf8')).toBe(writePractices());
  });

  it('has every figure once, and every rule', () => {
    const text = writePractices();
    const ids = text.split('\n').map((line) => line.split(' | ')[1]);
    for (const id of Object.keys(figures))
      expect(
        ids.filter((one) => one === `\`${id}\``),
        id,
      ).toHaveLength(1);
    for (const { id } of rules) expect(text, id).toContain(`| \`${id}\` |`);
  });

  it('has an example that is taken as it stands', () => {
    const read = readPractice(practiceExample);
    if (!read.ok) throw new Error(read.error.sentence);
    expect(admitPractice(read.value, []).ok).toBe(true);
  });
});
