import { expect, it } from 'vitest';
import { centile } from '../report.ts';
import { timedBuild } from './timedBuild.ts';
import { clockMark, keystrokesOf, type Span, type TraceEvent } from './trace.ts';

const main = { pid: 1, tid: 1 };
const ms = (time: number) => time * 1000;

/** A stretch of work on the page's main thread, milliseconds. */
function work(name: string, from: number, to: number, type?: string): TraceEvent {
  const data = type === undefined ? {} : { data: { type } };
  return { ...main, name, ph: 'X', ts: ms(from), dur: ms(to - from), args: data };
}

function frame(local: string, from: number, to: number, state: string): TraceEvent[] {
  const own = { name: 'PipelineReporter', pid: 1, tid: 2, id2: { local } };
  return [
    { ...own, ph: 'b', ts: ms(from), args: { frame_reporter: { state } } },
    { ...own, ph: 'e', ts: ms(to) },
  ];
}

/** The page's clock stands at 500 where the trace's stands at 1. */
const mark = { ...main, name: clockMark, ph: 'I', ts: ms(1), args: { data: { startTime: 500 } } };
const trace = [
  mark,
  work('EventDispatch', 10, 14, 'keydown'),
  work('Layout', 11, 12),
  work('Commit', 16, 17),
  ...frame('a', 9, 19, 'STATE_PRESENTED_ALL'),
  work('TimerFire', 30, 36),
  work('Paint', 36, 39),
  work('Paint', 37, 38),
  work('Commit', 39, 40),
  ...frame('b', 29, 41, 'STATE_DROPPED'),
  ...frame('c', 29, 45, 'STATE_PRESENTED_ALL'),
  work('EventDispatch', 100, 101, 'keydown'),
];
const spans: Span[] = [
  ['lay out', 530, 533],
  ['into the page', 533, 534],
];

it('a keystroke lasts until the frame is shown that has the letter, and the one with the sheet', () => {
  const [one, ...others] = keystrokesOf(trace, spans);
  expect(one).toMatchObject({ letterMs: 9, sheetMs: 35 });
  expect(others).toEqual([]);
});

it('its time is told by steps, and nothing twice', () => {
  expect(keystrokesOf(trace, spans)[0]!.steps).toEqual({
    'browser: style and layout': 1,
    'browser: paint': 5,
    'lay out': 3,
    'into the page': 1,
    // The key's 4 less the layout within, and the timer's 6 less what was told.
    'page: the rest': 5,
    'browser: raster and show': 5,
  });
});

it('a keystroke that does not paint the sheet is not counted', () => {
  expect(keystrokesOf(trace, [])).toEqual([]);
  expect(keystrokesOf([], spans)).toEqual([]);
});

it('a function that is no longer there is not left untimed in silence', () => {
  const { transform } = timedBuild('/top');
  const build = transform as (code: string, id: string) => string;
  const id = '/top/core/model/resolveWell.ts';
  expect(build('export function resolveWell(a) {}', id)).toContain('resolveWellUntimed(a) {}');
  expect(() => build('export function other() {}', id)).toThrow('no function resolveWell');
  expect(build('export function other() {}', '/top/core/other.ts')).not.toContain('Untimed');
});

it('a centile is a value that was measured', () => {
  expect(centile([4, 1, 3, 2], 0.5)).toBe(2);
  expect(centile([4, 1, 3, 2], 0.95)).toBe(4);
  expect(centile([4, 1, 3, 2], 0)).toBe(1);
  expect(centile([], 0.5)).toBeNaN();
});
