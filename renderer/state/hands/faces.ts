import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { DepthM } from '../../../core/base/units.ts';
import { roundDepth } from '../../../core/model/range.ts';
import { depthInto, type Handle, type Lane, type Neighbour } from './handle.ts';
import { thinnestM } from './limits.ts';

/** A row of the record with a top and a foot, and where both are written. */
export interface Body extends Neighbour {
  /** Rows of one space only are neighbours, as the fills round one string. */
  readonly space: string;
  readonly topPath: RecordPath;
  readonly footPath: RecordPath;
}

interface FromTo {
  readonly from: DepthM;
  readonly to: DepthM;
}

/** Rows with their ends in order of depth: what was written the wrong way round is drawn so too. */
export function bodiesOf<T extends FromTo>(
  list: RecordPath,
  rows: readonly T[],
  tell: (row: T, path: RecordPath) => { is: Neighbour['is']; space?: string },
): Body[] {
  return rows.flatMap((row, at) => {
    const path = `${list}[${at}]`;
    const [from, to] = [roundDepth(row.from), roundDepth(row.to)];
    if (!Number.isFinite(from) || !Number.isFinite(to) || from === to) return [];
    const ends = from < to ? { top: 'from', foot: 'to' } : { top: 'to', foot: 'from' };
    return [
      {
        path,
        fromM: Math.min(from, to),
        toM: Math.max(from, to),
        space: '',
        ...tell(row, path),
        topPath: `${path}.${ends.top}`,
        footPath: `${path}.${ends.foot}`,
      },
    ];
  });
}

/** The bodies that end and those that begin at one depth of one space. */
interface Meeting {
  readonly depthM: DepthM;
  readonly space: string;
  readonly above: Body[];
  readonly below: Body[];
}

function meetings(bodies: readonly Body[]): Meeting[] {
  const found = new Map<string, Meeting>();
  const at = (depthM: DepthM, space: string): Meeting => {
    const key = `${space} ${depthM}`;
    const meeting = found.get(key) ?? { depthM, space, above: [], below: [] };
    found.set(key, meeting);
    return meeting;
  };
  for (const body of bodies) {
    at(body.fromM, body.space).below.push(body);
    at(body.toM, body.space).above.push(body);
  }
  return [...found.values()].sort((a, b) => a.depthM - b.depthM);
}

/** Between which depths the outermost edges can be dragged. */
export interface Bounds {
  readonly leastM: DepthM;
  readonly mostM: DepthM;
}

/**
 * No part can be dragged to nothing. An edge with nothing at its other side goes as far as the
 * next part there, which closes the gap between them, else to the bounds.
 */
function limitsOf(bodies: readonly Body[], { depthM, space, above, below }: Meeting, far: Bounds) {
  // Looked for only where nothing is at that side: in a log without gaps nowhere but at its ends.
  const others = () => bodies.filter((body) => body.space === space);
  const feet = () =>
    others()
      .map(({ toM }) => toM)
      .filter((toM) => toM < depthM);
  const tops = () =>
    others()
      .map(({ fromM }) => fromM)
      .filter((fromM) => fromM > depthM);
  const leastM =
    above.length > 0
      ? Math.max(...above.map(({ fromM }) => fromM)) + thinnestM
      : Math.max(Math.min(far.leastM, depthM), ...feet());
  const mostM =
    below.length > 0
      ? Math.min(...below.map(({ toM }) => toM)) - thinnestM
      : Math.min(Math.max(far.mostM, depthM), ...tops());
  return { leastM: roundDepth(leastM), mostM: roundDepth(mostM) };
}

/**
 * The edges of a list of rows with tops and feet. Rows that meet at one depth share one handle;
 * where there is a gap or an overlap each row's end has its own.
 */
export function facesOf(bodies: readonly Body[], lane: Lane, far: Bounds): Handle[] {
  return meetings(bodies).map((meeting) => {
    const { depthM, above, below } = meeting;
    const writes = [
      ...above.map(({ footPath }) => depthInto(footPath, 'above')),
      ...below.map(({ topPath }) => depthInto(topPath, 'below')),
    ];
    const [up, down] = [above[0], below[0]];
    return {
      id: writes[0]?.path ?? '',
      edge: { kind: 'face', ...(up && { above: up }), ...(down && { below: down }) },
      lane,
      depthM,
      ...limitsOf(bodies, meeting, far),
      roundFromM: 0,
      row: up?.path ?? down?.path ?? '',
      writes,
    };
  });
}
