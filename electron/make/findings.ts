/**
 * Writes docs/findings.md: every finding with its sentence, reason and remedy. Run with
 * `npm run make:findings` after a change of the catalogue.
 */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { writeFindings } from './writeFindings.ts';

writeFileSync(path.resolve(import.meta.dirname, '../../docs/findings.md'), writeFindings());
