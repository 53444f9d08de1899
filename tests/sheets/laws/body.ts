import type { PathItem } from '../../../core/drawing/items.ts';
import type { Page } from '../../../core/drawing/items.ts';
import { extentOf } from '../extent.ts';
import { groupsNamed, placedOn, withoutDetails } from '../placed.ts';
import { rulerOf } from '../ruler.ts';
import { mm, type Law } from './law.ts';

/** Rules across the whole drawing: under the columns' heads and under the well. */
function rulesOn(page: Page): number[] {
  const paths = groupsNamed(page.items, 'columns')
    .flatMap(({ items }) => items)
    .filter((item): item is PathItem => item.kind === 'path');
  const level = paths.filter(({ segments: [a, b] }) => a![2] === b![2]);
  return level.map(({ segments }) => segments[0]![2] as number).sort((a, b) => a - b);
}

const parts = ['ground', 'depthRuler', 'string', 'annulus', 'boreWall', 'descriptions', 'callouts'];

/** The well and its words stand between the rule under the heads and the rule that closes it. */
export const wellInBody: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) => {
    if (!rulerOf(page)) return [];
    const [head, foot] = rulesOn(page) as [number, number];
    return placedOn(withoutDetails(page))
      .filter(({ groups }) => parts.some((part) => groups.includes(part)))
      .filter(({ item }) => {
        const [, top, , end] = extentOf(item);
        return top < head - 0.01 || end > foot + 0.01;
      })
      .map(({ item, groups, source }) => {
        const [, top, , end] = extentOf(item);
        return `page ${at + 1}: ${groups.at(-1)} (${source}) from ${mm(top)} to ${mm(end)}`;
      });
  });
