import { readdirSync, rmSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { keptReference, placeOf, referenceSheets } from './sheets.ts';

/** Lines that only one of two texts has, in order, `-` for the kept and `+` for the new one. */
function changedLines(kept: string, now: string): string[] {
  const [before, after] = [kept.split('\n'), now.split('\n')];
  const [had, has] = [new Set(before), new Set(after)];
  return [
    ...before.filter((one) => !has.has(one)).map((one) => `- ${one}`),
    ...after.filter((one) => !had.has(one)).map((one) => `+ ${one}`),
  ];
}

it.each(Object.keys(referenceSheets))('%s is drawn as its reference', (name) => {
  const kept = keptReference(name);
  const now = referenceSheets[name]!();
  if (now === kept) rmSync(placeOf(name, true), { force: true });
  else writeFileSync(placeOf(name, true), now);
  expect(
    changedLines(kept, now).slice(0, 20),
    `The drawing changed. Compare tests/references/${name}.txt with the .new beside it; if it is ` +
      'meant, run npm run accept:references.',
  ).toEqual([]);
  expect(now).toBe(kept);
});

it('every reference kept is one that is drawn', () => {
  const kept = readdirSync(new URL('.', import.meta.url)).filter((name) => name.endsWith('.txt'));
  expect(kept.sort()).toEqual(
    Object.keys(referenceSheets)
      .map((name) => `${name}.txt`)
      .sort(),
  );
});
