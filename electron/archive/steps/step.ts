/**
 * One change of the archive's shape: raw SQL that is never edited once an archive was made with
 * it. The number becomes the file's `user_version`.
 */
export interface Step {
  readonly number: number;
  readonly name: string;
  readonly sql: string;
}

/**
 * Steps are numbered in tens, so that the order stands in the number and not in the list.
 * @throws when a number is not a multiple of ten or does not rise.
 */
export function inOrder(steps: readonly Step[]): readonly Step[] {
  let last = 0;
  for (const { number, name } of steps) {
    if (number % 10 !== 0) throw new Error(`step ${number} (${name}) is not numbered in tens`);
    if (number <= last) throw new Error(`step ${number} (${name}) does not rise above ${last}`);
    last = number;
  }
  return steps;
}
