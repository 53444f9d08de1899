import type { Drawing, Item } from '../../core/drawing/items.ts';
import { extentOf } from '../sheets/extent.ts';
import { capitalsHigh } from '../sheets/measure.ts';

/** Millimetres to the hundredth, never `-0.00`. */
function mm(value: number): string {
  return (Math.round(value * 100) / 100 + 0).toFixed(2);
}

type Leaf = Exclude<Item, { kind: 'group' }>;

/** What a line says of a kind besides its place. */
function lookOf(item: Leaf): string {
  if (item.kind === 'region') return item.hatch;
  if (item.kind === 'image') return item.says;
  if (item.kind === 'link') return JSON.stringify(item.to);
  if (item.kind === 'text') return `${item.face} ${mm(capitalsHigh(item.em))} “${item.text}”`;
  const { stroke, fill } = item;
  const pen = stroke ? `${stroke.width}${stroke.dash ? ' dashed' : ''} ${stroke.ink}` : '';
  return [pen, fill ? `filled ${fill}` : ''].filter(Boolean).join(', ');
}

function placeOf(items: readonly Leaf[]): string {
  const [first] = items;
  if (first?.kind === 'text') return `${mm(first.x)} ${mm(first.y)}`;
  const extents = items.map(extentOf);
  const least = (at: number) => Math.min(...extents.map((one) => one[at]!));
  const most = (at: number) => Math.max(...extents.map((one) => one[at]!));
  return `${mm(least(0))} ${mm(least(1))} to ${mm(most(2))} ${mm(most(3))}`;
}

type Group = Extract<Item, { kind: 'group' }>;

interface Run {
  readonly look: string;
  readonly items: Leaf[];
}

/**
 * Items that differ in place alone, as slots and ticks do, are one run; texts and groups stand for
 * themselves and end the runs before them.
 */
function runsOf(items: readonly Item[]): (Run | Group)[] {
  const all: (Run | Group)[] = [];
  let open = new Map<string, Run>();
  for (const item of items) {
    const look = item.kind === 'group' ? '' : `${item.kind} ${lookOf(item)} ${item.source ?? ''}`;
    const run = open.get(look);
    if (item.kind === 'group' || item.kind === 'text') open = new Map();
    if (item.kind === 'group') all.push(item);
    else if (run && item.kind !== 'text') run.items.push(item);
    else {
      const next = { look, items: [item] };
      all.push(next);
      if (item.kind !== 'text') open.set(look, next);
    }
  }
  return all;
}

function linesOf(items: readonly Item[], indent: string): string[] {
  return runsOf(items).flatMap((one) => {
    if (!('look' in one)) {
      const head = [one.name ?? 'group', one.source].filter(Boolean).join('  ');
      return one.items.length === 0
        ? []
        : [`${indent}${head}`, ...linesOf(one.items, `${indent}  `)];
    }
    const [item] = one.items as [Leaf];
    const count = one.items.length > 1 ? ` × ${one.items.length}` : '';
    const parts = [`${item.kind}${count}`, placeOf(one.items), lookOf(item), item.source];
    return [indent + parts.filter(Boolean).join('  ')];
  });
}

/**
 * A drawing as lines that a reviewer can read: groups as headings, then kind, place in millimetres
 * from the page's top left corner, look and source of each item.
 */
export function readable({ pages, hatches, ...drawing }: Drawing): string {
  const head = [
    `${drawing.title}; ${drawing.subject}`,
    `hatches: ${Object.keys(hatches).join(' ')}`,
  ];
  const body = pages.flatMap(({ width, height, items }, at) => [
    '',
    `page ${at + 1}  ${width} × ${height}`,
    ...linesOf(items, '  '),
  ]);
  return [...head, ...body, ''].join('\n');
}
