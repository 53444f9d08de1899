import { readFileSync } from 'node:fs';
import path from 'node:path';

/** Text of a demo well's record: the one with sixty intervals, the longest of them. */
export const demoText = readFileSync(
  path.resolve(import.meta.dirname, '../../demo-data/sixty-intervals-58m.json'),
  'utf8',
);
