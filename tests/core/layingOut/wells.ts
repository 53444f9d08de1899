import { layOut } from '../../../core/layingOut/layOut.ts';
import type { LaidOut, Proposal } from '../../../core/layingOut/proposal.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import type { LayingOut, SitePipe } from '../../../core/record/layingOut.ts';
import type { LogInterval } from '../../../core/record/log.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { record } from '../model/well.ts';

/** Pipe of 125 mm that goes 0.10 m into the bell below, so that a pipe of 3 m takes up 2.90 m. */
const uPvc = { material: 'uPVC', outside: 125, wall: 6, joint: 'glued bell', insertion: 0.1 };

export function plain(count: number, length = 3): SitePipe {
  return { kind: 'plain', count, length, ...uPvc };
}

export function screen(count: number, length = 3): SitePipe {
  return { kind: 'screen', count, length, ...uPvc, slotWidth: 0.5, openArea: 5 };
}

/** A log by the foot of each bed. */
export function logOf(...beds: [foot: number, bed: Omit<LogInterval, 'from' | 'to'>][]) {
  return beds.map(([to, bed], at) => ({ from: beds[at - 1]?.[0] ?? 0, to, ...bed }));
}

export const clay = { material: 'clay', moisture: 'moist' } as const;
export const sand = { material: 'sand', moisture: 'waterBearing' } as const;

/** A hole of 250 mm down to the foot of a log, with pipes on site. */
export function wellOf(log: LogInterval[], layingOut: LayingOut): WellRecord {
  const depthReached = log.at(-1)!.to;
  const sections = [{ from: 0, to: depthReached, diameter: 250 }];
  return record({
    identity: { practice: 'handDrilled', state: 'drilled' },
    bore: { sections, depthReached },
    log,
    layingOut: { rate: 1, grainMin: 1, grainMax: 2, ...layingOut },
  });
}

export function laidOut(well: WellRecord): LaidOut {
  return layOut(well, resolveWell(well), practiceOf(well));
}

/** Depths of the slots, which leave out the lowest screen's end in the bell below. */
export function slotsOf({ tally }: Proposal): [top: number, foot: number] {
  const screens = tally.filter(({ kind }) => kind === 'screen');
  const below = tally[tally.indexOf(screens[0]!) - 1]!;
  return [screens.at(-1)!.topM, below.topM];
}

/** The fills as `from–to kind`, from the ground down. */
export function fillsOf({ annulus }: Proposal): string[] {
  return annulus.map(({ from, to, fill }) => `${from}–${to} ${fill}`);
}
