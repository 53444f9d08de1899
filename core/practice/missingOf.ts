import type { Judgement } from './judgeWell.ts';
import type { Missing } from './rules/rule.ts';

/** What rules missed in order to judge, each thing at its place once, in the order of the rules. */
export function missingOf({ verdicts }: Judgement): readonly Missing[] {
  const byPlace = new Map<string, Missing>();
  for (const missing of verdicts.flatMap((one) => one.missing)) {
    const { what, path, fromM, toM } = missing;
    const place = JSON.stringify([what, path, fromM, toM]);
    if (!byPlace.has(place)) byPlace.set(place, missing);
  }
  return [...byPlace.values()];
}
