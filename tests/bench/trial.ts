/** Ways to do comparable work, timed side by side; the first is what the others are set against. */
export interface Trial {
  readonly title: string;
  /** What the figures tell, and what they do not. */
  readonly says: string;
  readonly rivals: readonly Rival[];
}

export interface Rival {
  readonly name: string;
  readonly run: () => unknown;
}

export interface Timing {
  readonly name: string;
  /** Median of the rounds, milliseconds. */
  readonly medianMs: number;
  /** How many times as long as the first rival. */
  readonly ratio: number;
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

function timeOf(run: () => unknown, clock: () => number): number {
  const start = clock();
  run();
  return clock() - start;
}

/**
 * Times the rivals in turn, round by round, so that a machine that slows down slows all of them.
 * One round before the counted ones warms up. `clock` gives milliseconds.
 */
export function runTrial({ rivals }: Trial, rounds: number, clock: () => number): Timing[] {
  const times = rivals.map((): number[] => []);
  for (let round = 0; round <= rounds; round += 1)
    rivals.forEach(({ run }, at) => {
      const time = timeOf(run, clock);
      if (round > 0) times[at]!.push(time);
    });
  const medians = times.map(median);
  return rivals.map(({ name }, at) => ({
    name,
    medianMs: medians[at]!,
    ratio: medians[at]! / medians[0]!,
  }));
}
