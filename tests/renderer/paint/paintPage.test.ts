// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import type { Item } from '../../../core/drawing/items.ts';
import { markup } from '../../../core/paint/svg/markup.ts';
import { pageTree } from '../../../core/paint/svg/pageTree.ts';
import { paintPage } from '../../../renderer/paint/paintPage.ts';
import { drawing, everyKind, line, page, text } from '../../core/paint/sample.ts';

let svg: SVGSVGElement;
beforeEach(() => {
  svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  document.body.replaceChildren(svg);
});

function paint(items: readonly Item[]) {
  paintPage(svg, drawing([page(items)]), 0);
}

/** What stands in the page, as its own tree would be written. */
function expected(items: readonly Item[]): string {
  const { children } = pageTree(page(items), drawing([]).hatches);
  return children!.map(markup).join('');
}

function shown(): string {
  const node = (element: Element): Parameters<typeof markup>[0] => ({
    name: element.localName,
    attributes: Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value])),
    ...(element.children.length
      ? { children: [...element.children].map(node) }
      : { text: element.textContent }),
  });
  return [...svg.children].map((element) => markup(node(element))).join('');
}

const three = [
  text('first', 10, 10, { source: 'log[0].words' }),
  text('second', 10, 20, { source: 'log[1].words' }),
  line(0, 0, 9, 9),
];

describe('a page on screen', () => {
  it('is the very tree that is written to drawing files', () => {
    paint(everyKind);
    expect(shown()).toBe(expected(everyKind));
    expect(svg.getAttribute('viewBox')).toBe('0 0 210 297');
    expect(svg.style.fontKerning).toBe('none');
  });

  it('has the same tree after an edit as when painted anew', () => {
    const edited = [...everyKind.slice(3, 9).reverse(), line(1, 2, 3, 4), ...everyKind.slice(9)];
    paint(everyKind);
    paint(edited);
    expect(shown()).toBe(expected(edited));
    paint([]);
    expect(shown()).toBe('<defs/>');
  });

  it('keeps the elements of fields that stay, wherever they move to', () => {
    paint(three);
    const [, first, second, stroke] = [...svg.children];
    paint([text('new', 10, 5, { source: 'log[2].words' }), three[2]!, three[1]!, three[0]!]);
    expect([...svg.children].slice(2)).toEqual([stroke, second, first]);
    expect(svg.children[1]!.textContent).toBe('new');
  });

  it('writes only what differs', async () => {
    paint(three);
    const changes: string[] = [];
    const observer = new MutationObserver((records) =>
      changes.push(
        ...records
          .filter(({ target }) => target !== svg)
          .map(({ type, attributeName }) => attributeName ?? type),
      ),
    );
    observer.observe(svg, { attributes: true, childList: true, subtree: true });
    paint([{ ...three[0]!, x: 11 } as Item, three[1]!, three[2]!]);
    await Promise.resolve();
    observer.disconnect();
    expect(changes).toEqual(['x']);
  });

  it('leaves alone the classes that the page puts on', () => {
    paint(three);
    svg.children[1]!.classList.add('marked');
    paint(three);
    expect(svg.children[1]!.getAttribute('class')).toBe('marked');
  });

  it('keeps the hatches of two sheets apart by the ids of their elements', () => {
    svg.id = 'left';
    paint(everyKind);
    expect(svg.querySelector('pattern')!.id).toBe('left-hatch-dotted');
    expect(svg.querySelector('g path:last-child')!.getAttribute('fill')).toBe(
      'url(#left-hatch-dotted)',
    );
  });

  it('is refused when the drawing has no such page', () => {
    expect(() => paintPage(svg, drawing([page([])]), 1)).toThrow('no page with index 1');
  });
});
