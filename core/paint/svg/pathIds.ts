import type { SvgNode } from './node.ts';

/** A path of the record as an id: `log[3].from` is `log.3.from`. */
function slug(path: string): string {
  return path.replace(/\[(\d+)\]/g, '.$1').replace(/[^A-Za-z0-9._-]/g, '_');
}

/**
 * The tree with an id on each element that shows a field of the record, made of the field's path;
 * from the second element of one field on, with a number behind it.
 */
export function withPathIds(node: SvgNode, seen = new Map<string, number>()): SvgNode {
  const path = node.attributes['data-path'];
  const children = () =>
    node.children && { children: node.children.map((one) => withPathIds(one, seen)) };
  if (path === undefined) return { ...node, ...children() };
  const name = slug(path);
  const count = (seen.get(name) ?? 0) + 1;
  seen.set(name, count);
  const id = count === 1 ? name : `${name}-${count}`;
  return { ...node, attributes: { id, ...node.attributes }, ...children() };
}
