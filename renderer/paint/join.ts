import { select } from 'd3';
import type { SvgNode } from '../../core/paint/svg/node.ts';

/** A node with the name by which it is found again when the page is painted anew. */
interface Keyed {
  readonly key: string;
  readonly node: SvgNode;
}

const svgSpace = 'http://www.w3.org/2000/svg';
const xmlSpace = 'http://www.w3.org/XML/1998/namespace';

/** What the page itself puts on elements; the painter neither sets nor clears these. */
const leftAlone = ['class', 'style'];

function nameOf({ name, attributes }: SvgNode): string {
  return [name, attributes.id, attributes['data-path'], attributes['data-name']].join(' ');
}

/** Nodes of one name are told apart by their order, so that the others keep their elements. */
function keyed(nodes: readonly SvgNode[]): Keyed[] {
  const seen = new Map<string, number>();
  return nodes.map((node) => {
    const name = nameOf(node);
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return { key: `${name} ${count}`, node };
  });
}

/** Writes an attribute only where it says something else. */
export function setAttribute(element: Element, name: string, value: string): void {
  if (element.getAttribute(name) === value) return;
  if (name.startsWith('xml:')) element.setAttributeNS(xmlSpace, name, value);
  else element.setAttribute(name, value);
}

function setAttributes(element: Element, attributes: SvgNode['attributes']): void {
  for (const name of element.getAttributeNames())
    if (!(name in attributes) && !leftAlone.includes(name)) element.removeAttribute(name);
  for (const [name, value] of Object.entries(attributes)) setAttribute(element, name, value);
}

function setContent(element: Element, { children, text }: SvgNode): void {
  if (children) joinNodes(element, children);
  else if (element.textContent !== (text ?? '')) element.textContent = text ?? '';
}

/** What elements were painted from last: a node that is still the same object changes nothing. */
const painted = new WeakMap<Element, SvgNode>();

function paintNode(element: Element, node: SvgNode): void {
  if (painted.get(element) === node) return;
  setAttributes(element, node.attributes);
  setContent(element, node);
  painted.set(element, node);
}

/**
 * Makes an element's children be the given nodes. Elements that show the same field as before are
 * kept, and of them only what differs is written.
 */
export function joinNodes(parent: Element, nodes: readonly SvgNode[]): void {
  select<Element, unknown>(parent)
    .selectChildren<Element, Keyed>()
    .data(keyed(nodes), ({ key }) => key)
    .join((enter) => enter.append(({ node }) => document.createElementNS(svgSpace, node.name)))
    .each(function ({ node }) {
      paintNode(this, node);
    });
}
