import type { RecordPath } from '../../../base/recordPath.ts';
import type { Metres } from '../../../base/units.ts';
import type { PipeStep, StringSteps } from './pipeSteps.ts';

/** A mark to be painted on a pipe before it goes in. */
export interface PaintMark {
  readonly what: 'screenTop' | 'ground' | 'centralisers';
  /** Numbers of the pipes that bear it, rising. */
  readonly pipes: readonly number[];
  /** From the pipe's own lower end, measured along it before it goes in. */
  readonly fromLowerEndM: Metres;
  /** Of the mark at ground level: how far under the casing's top it is. */
  readonly underTopM?: Metres;
  readonly path: RecordPath;
}

/** Screens that stand on one another, each run from its lowest pipe upwards. */
function screenRuns(steps: readonly PipeStep[]): PipeStep[][] {
  const runs: PipeStep[][] = [];
  for (const [at, step] of steps.entries()) {
    if (step.kind !== 'screen') continue;
    if (steps[at - 1]?.kind === 'screen') runs.at(-1)!.push(step);
    else runs.push([step]);
  }
  return runs;
}

/** The top of each run; its foot is the lower end of a pipe, where nothing need be painted. */
function screenMarks(steps: readonly PipeStep[]): PaintMark[] {
  return screenRuns(steps).map((run): PaintMark => {
    const { number, lengthM = 0, path } = run.at(-1)!;
    return { what: 'screenTop', pipes: [number], fromLowerEndM: lengthM, path };
  });
}

/** On the first pipe whose upper end stands out of the ground. */
function groundMark({ string, steps }: StringSteps): PaintMark[] {
  const through = steps.find(({ topM, bottomM }) => topM < 0 && bottomM >= 0);
  if (!through) return [];
  return [
    {
      what: 'ground',
      pipes: [through.number],
      fromLowerEndM: through.bottomM,
      underTopM: string.stickUpM,
      path: through.path,
    },
  ];
}

/** Pipes with a centraliser at the same height are marked alike. */
function centraliserMarks(steps: readonly PipeStep[]): PaintMark[] {
  const byHeight = new Map<Metres, PipeStep[]>();
  for (const step of steps)
    for (const heightM of step.centralisersM)
      byHeight.set(heightM, [...(byHeight.get(heightM) ?? []), step]);
  return [...byHeight].map(([heightM, alike]) => ({
    what: 'centralisers',
    pipes: alike.map(({ number }) => number),
    fromLowerEndM: heightM,
    path: alike[0]!.path,
  }));
}

/** What to paint on the pipes, in the order in which they go in; centralisers last. */
export function paintMarks(strings: readonly StringSteps[]): PaintMark[] {
  return [
    ...strings.flatMap((one) => [...screenMarks(one.steps), ...groundMark(one)]),
    ...centraliserMarks(strings.flatMap(({ steps }) => steps)),
  ];
}

/** `6–11, 14`: numbers with those that follow each other drawn together. */
export function saidNumbers(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const one of numbers) {
    const last = runs.at(-1);
    if (last && last[1] === one - 1) last[1] = one;
    else runs.push([one, one]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}–${to}`)).join(', ');
}
