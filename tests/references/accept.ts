/** `npm run accept:references`: takes the sheets as they are drawn now for the references. */
import { rmSync, writeFileSync } from 'node:fs';
import { placeOf, referenceSheets } from './sheets.ts';

for (const [name, sheet] of Object.entries(referenceSheets)) {
  writeFileSync(placeOf(name), sheet());
  rmSync(placeOf(name, true), { force: true });
  console.log(`tests/references/${name}.txt`);
}
