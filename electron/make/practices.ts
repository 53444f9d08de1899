/**
 * Writes docs/practices.md: how a practice is written, and every figure of those that come with the
 * program. Run with `npm run make:practices` after a change of a practice, a figure or a rule.
 */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { writePractices } from './writePractices.ts';

writeFileSync(path.resolve(import.meta.dirname, '../../docs/practices.md'), writePractices());
