/** One event of a browser's trace; times in microseconds of the browser's clock. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly dur?: number;
  readonly pid: number;
  readonly tid: number;
  readonly id2?: { readonly local?: string };
  readonly args?: {
    readonly data?: { readonly type?: string; readonly startTime?: number };
    readonly frame_reporter?: { readonly state?: string };
  };
}

/** A step with its start and end, milliseconds of the page's clock. */
export type Span = readonly [step: string, start: number, end: number];

/** What came of one keystroke that changed the sheet; milliseconds. */
export interface Keystroke {
  /** Until the frame was shown that has the letter. */
  readonly letterMs: number;
  /** Until the frame was shown that has the changed sheet. */
  readonly sheetMs: number;
  /** What each step took up to the sheet's frame. */
  readonly steps: Readonly<Record<string, number>>;
}

/** Mark that stands in the trace at a known time of the page's clock. */
export const clockMark = 'clock of the page';

const browserSteps: Readonly<Record<string, string>> = {
  UpdateLayoutTree: 'browser: style and layout',
  Layout: 'browser: style and layout',
  PrePaint: 'browser: paint',
  Paint: 'browser: paint',
  Layerize: 'browser: paint',
  Commit: 'browser: paint',
};

const endOf = ({ ts, dur = 0 }: TraceEvent) => ts + dur;

/** Frames that were shown, from when they began to when they were seen. */
function shownFrames(events: readonly TraceEvent[]): [from: number, to: number][] {
  const begun = new Map<string, TraceEvent[]>();
  const frames: [number, number][] = [];
  for (const event of events) {
    if (event.name !== 'PipelineReporter') continue;
    const key = `${event.pid} ${event.id2?.local ?? ''}`;
    if (event.ph === 'b') begun.set(key, [...(begun.get(key) ?? []), event]);
    const begin = event.ph === 'e' ? begun.get(key)?.shift() : undefined;
    if (begin?.args?.frame_reporter?.state?.startsWith('STATE_PRESENTED'))
      frames.push([begin.ts, event.ts]);
  }
  return frames;
}

/** Events of one kind that lie in no other of that kind. */
function outermost(events: readonly TraceEvent[]): TraceEvent[] {
  return events.filter(
    (one) => !events.some((two) => two !== one && two.ts <= one.ts && endOf(two) >= endOf(one)),
  );
}

/** Milliseconds by step between two times of the trace. */
function stepsBetween(
  main: readonly TraceEvent[],
  spans: readonly Span[],
  from: number,
  to: number,
): Record<string, number> {
  const steps: Record<string, number> = {};
  const add = (step: string, us: number) => (steps[step] = (steps[step] ?? 0) + us / 1000);
  const inside = main.filter(({ ts }) => ts >= from && ts < to);
  const layouts = inside.filter(({ name }) => /^(Layout|UpdateLayoutTree)$/.test(name));
  for (const [name, step] of Object.entries(browserSteps))
    for (const event of outermost(inside.filter((one) => one.name === name)))
      add(step, event.dur ?? 0);
  const within = (start: number, end: number) =>
    layouts.filter(({ ts }) => ts >= start && ts < end).reduce((sum, { dur = 0 }) => sum + dur, 0);
  let told = 0;
  for (const [step, start, end] of spans.filter(([, at]) => at >= from && at < to)) {
    const own = end - start - within(start, end);
    add(step, own);
    told += own;
  }
  const scripts = outermost(
    inside.filter(({ name }) => /^(EventDispatch|FireAnimationFrame|TimerFire)$/.test(name)),
  );
  for (const event of scripts)
    add('page: the rest', (event.dur ?? 0) - within(event.ts, endOf(event)));
  add('page: the rest', -told);
  return steps;
}

/** Each keystroke after which the sheet was painted before the next one came. */
export function keystrokesOf(trace: readonly TraceEvent[], page: readonly Span[]): Keystroke[] {
  const events = trace.toSorted((a, b) => a.ts - b.ts);
  const mark = events.find(({ name }) => name === clockMark);
  const keys = events.filter(
    ({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'keydown',
  );
  const [first] = keys;
  if (!mark || !first) return [];
  const origin = mark.ts - (mark.args?.data?.startTime ?? 0) * 1000;
  const spans = page.map(([step, a, b]): Span => [step, origin + a * 1000, origin + b * 1000]);
  const main = events.filter(
    ({ pid, tid, ph }) => pid === first.pid && tid === first.tid && ph === 'X',
  );
  const commits = main.filter(({ name }) => name === 'Commit');
  const frames = shownFrames(events);
  const shownAfter = (time: number) => {
    const commit = commits.find(({ ts }) => ts >= time);
    const ends = frames.filter(([from, to]) => commit && from <= commit.ts && to >= endOf(commit));
    return commit && ends.length > 0
      ? { commit, at: Math.min(...ends.map(([, to]) => to)) }
      : undefined;
  };
  return keys.flatMap(({ ts }, at) => {
    const next = keys[at + 1]?.ts ?? Infinity;
    const painted = spans.find(([step, a]) => step === 'into the page' && a > ts && a < next);
    const letter = shownAfter(ts);
    const sheet = painted && shownAfter(painted[2]);
    if (!letter || !sheet) return [];
    const steps = stepsBetween(main, spans, ts, endOf(sheet.commit));
    const told = { ...steps, 'browser: raster and show': (sheet.at - endOf(sheet.commit)) / 1000 };
    return [{ letterMs: (letter.at - ts) / 1000, sheetMs: (sheet.at - ts) / 1000, steps: told }];
  });
}
