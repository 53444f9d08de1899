import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { folder, shownPages } from './shownPages.ts';

/** Makes every picture anew; those of pages that are gone go too. */
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
for (const { file, png } of shownPages()) writeFileSync(path.join(folder, file), await png());
