import { decimalMarks } from '../../../core/base/language.ts';
import { formatDepth, formatShort } from '../../../core/base/numbers.ts';
import type { DepthM, Metres } from '../../../core/base/units.ts';
import { say, sheetWords } from '../../parts/words.ts';
import type { Edge, Handle, Neighbour } from '../../state/hands/handle.ts';
import { speech } from '../../state/language.svelte.ts';

/** Metres to the centimetre, with their unit. */
export function metres(length: Metres): string {
  return `${formatDepth(length, decimalMarks[speech.language])} m`;
}

function partName({ is }: Neighbour): string {
  if (is.kind === 'layer')
    return is.material ? sheetWords().materials[is.material].noun : say.hands.layer;
  if (is.kind === 'fill') return sheetWords().fills[is.fill];
  const diameter = formatShort(is.diameterMm, 1, decimalMarks[speech.language]);
  return say.hands.section(`${diameter} mm`);
}

function faceName(above: Neighbour | undefined, below: Neighbour | undefined): string {
  if (above && below) return say.hands.boundary(partName(above), partName(below));
  if (above) return say.hands.foot(partName(above));
  return say.hands.top(below ? partName(below) : '');
}

/** What an edge is called, without its depth. */
function edgeName(edge: Edge): string {
  const words = say.hands;
  switch (edge.kind) {
    case 'face':
      return faceName(edge.above, edge.below);
    case 'level':
      return edge.state ? words.levels[edge.state] : words.level;
    case 'string':
      return (edge.end === 'top' ? words.stringTop : words.stringFoot)(String(edge.label));
    case 'strike':
    case 'rise':
      return words[edge.kind](String(edge.number));
    case 'joint':
      return words.joint(String(edge.label));
    default:
      return words[edge.kind];
  }
}

/** An edge as it is named to who points at it, as in `Foot of clay at 12.00 m`. */
export function nameOf({ edge }: Handle, depthM: DepthM): string {
  return say.hands.at(edgeName(edge), metres(depthM));
}

function faceFigures(edge: Edge & { kind: 'face' }, handle: Handle, toM: DepthM, apart: boolean) {
  const { above, below } = edge;
  // Of two parts that meet, only the one that gets shorter moves alone.
  const still = (side: 'above' | 'below') =>
    apart && above && below && (side === 'above') !== toM < handle.depthM;
  const end = (side: 'above' | 'below') => (still(side) ? handle.depthM : toM);
  return [
    ...(above ? [say.hands.long(partName(above), metres(end('above') - above.fromM))] : []),
    ...(below ? [say.hands.long(partName(below), metres(below.toM - end('below')))] : []),
  ];
}

/** What follows from where an edge stands: lengths of its neighbours, a reading, a stick-up. */
export function figuresOf(handle: Handle, depthM: DepthM, apart = false): string[] {
  const { edge } = handle;
  if (edge.kind === 'face') return faceFigures(edge, handle, depthM, apart);
  if (edge.kind === 'level')
    return edge.readMoreM === 0 ? [] : [say.hands.read(metres(depthM + edge.readMoreM))];
  if (edge.kind !== 'string') return [];
  const footM = edge.end === 'foot' ? depthM : depthM + edge.tallyM;
  return [say.hands.footAt(metres(footM)), say.hands.stickUp(metres(edge.tallyM - footM))];
}
