/**
 * Writes assets/NOTICES.md: the licences of all fonts and packages. Run with
 * `npm run make:notices` after a change of the packages.
 */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { noticeSources } from './noticeSources.ts';
import { writeNotices } from './writeNotices.ts';

const top = path.resolve(import.meta.dirname, '../..');
writeFileSync(path.join(top, 'assets/NOTICES.md'), writeNotices(noticeSources(top)));
