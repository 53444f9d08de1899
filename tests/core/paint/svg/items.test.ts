import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../core/drawing/items.ts';
import { paintSvg } from '../../../../core/paint/svg/write.ts';
import { openSvg } from '../../../reading/svg.ts';
import { box, drawing, line, page, picture, text } from '../sample.ts';

const root = (...items: Item[]) => openSvg(paintSvg(drawing([page(items)]), 0));

function attributesOf(element: Element): Record<string, string> {
  return Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value]));
}

/** Attributes of the first element that a selector finds among the page's items. */
function drawn(selector: string, ...items: Item[]): Record<string, string> {
  return attributesOf(
    root(...items).querySelector(`svg > :not(defs) ${selector}, svg > ${selector}`)!,
  );
}

describe('a path', () => {
  it('has all of its pen and no more', () => {
    const plain = drawn('path', line(1, 2, 3, 4, { ink: '#0000ff', width: 0.18 }));
    expect(plain).toEqual({
      ...{ d: 'M1 2L3 4', fill: 'none', stroke: '#0000ff', 'stroke-width': '0.18' },
    });
    const ends = { cap: 'square', join: 'round' } as const;
    const dashed = { ink: '#ff0000', width: 0.5, dash: [3, 1, 0.5, 1], ...ends } as const;
    expect(drawn('path', line(0, 0, 1, 0, dashed))).toMatchObject({
      'stroke-dasharray': '3 1 0.5 1',
      'stroke-linecap': 'square',
      'stroke-linejoin': 'round',
    });
    expect(drawn('path', line(0, 0, 1, 0, { ...dashed, dash: [] }))).not.toHaveProperty(
      'stroke-dasharray',
    );
  });

  it('writes each kind of segment, and fills without a pen', () => {
    const curve = {
      kind: 'path',
      segments: [['M', 0, 1], ['C', 1, 2, 3, 4, 5, 6], ['L', 7, 8], ['Z']],
      fill: '#aabbcc',
    } as const;
    expect(drawn('path', curve)).toEqual({ d: 'M0 1C1 2 3 4 5 6L7 8Z', fill: '#aabbcc' });
  });
});

describe('a text', () => {
  it('stands by the left end of its baseline, and turned it turns about that point', () => {
    const level = drawn('text', text('ab', 20, 30));
    expect(level).toMatchObject({ x: '20', y: '30', fill: '#102030', 'font-size': '4' });
    expect(level).not.toHaveProperty('transform');
    expect(drawn('text', text('ab', 20, 30, { turn: -90 }))['transform']).toBe('rotate(-90 20 30)');
    expect(drawn('text', text('ab', 20, 30, { turn: 0 }))).not.toHaveProperty('transform');
  });

  it('without width has no length to be held to', () => {
    const empty = drawn('text', text('', 20, 30));
    expect(empty).not.toHaveProperty('textLength');
    expect(drawn('text', text('a', 20, 30))['lengthAdjust']).toBe('spacingAndGlyphs');
  });
});

describe('a region', () => {
  const region = { kind: 'region', segments: box(1, 2, 3, 4), hatch: 'dotted' } as const;

  it('is filled with its ground and over it with its hatch, on one outline', () => {
    const parts = [...root({ ...region, ground: '#f5e6c0' }).querySelectorAll('svg > g path')];
    expect(parts.map((part) => part.getAttribute('fill'))).toEqual([
      '#f5e6c0',
      'url(#hatch-dotted)',
    ]);
    const outlines = parts.map((part) => part.getAttribute('d'));
    expect(outlines).toEqual(Array(2).fill('M1 2L4 2L4 6L1 6Z'));
  });

  it('without a ground is its hatch alone', () => {
    expect(root(region).querySelectorAll('svg > g path')).toHaveLength(1);
  });
});

describe('an image', () => {
  it('is stretched to its box and told in words to those who cannot see it', () => {
    const image = {
      kind: 'image',
      ...{ x: 1, y: 2, width: 30, height: 4, data: picture },
      ...{ says: 'Four "dots"', source: 'photos[0]' },
    } as const;
    expect(drawn('image', image)).toEqual({
      ...{ x: '1', y: '2', width: '30', height: '4', href: picture },
      preserveAspectRatio: 'none',
      role: 'img',
      'aria-label': 'Four "dots"',
      id: 'photos.0',
      'data-path': 'photos[0]',
    });
  });
});

describe('a group', () => {
  const inner = line(0, 0, 1, 1);

  it('without clip and name is bare, and holds its items in their order', () => {
    const items = [inner, text('over', 1, 1), { kind: 'group', items: [inner] }] as const;
    const group = root({ kind: 'group', items }).querySelector('svg > g')!;
    expect(attributesOf(group)).toEqual({});
    expect([...group.children].map(({ tagName }) => tagName)).toEqual(['path', 'text', 'g']);
  });

  it('shares a clip with a group of an equal box, and with no other', () => {
    const clipped = (x: number) =>
      ({ kind: 'group', items: [inner], clip: { x, y: 0, width: 5, height: 5 } }) as const;
    const svg = root(clipped(0), clipped(0), clipped(1));
    const ids = [...svg.querySelectorAll('clipPath')].map(({ id }) => id);
    expect(new Set(ids).size).toBe(2);
    const used = [...svg.querySelectorAll('svg > g')].map((one) => one.getAttribute('clip-path'));
    expect(used).toEqual([`url(#${ids[0]})`, `url(#${ids[0]})`, `url(#${ids[1]})`]);
  });
});

describe('a link', () => {
  it('is a box that is felt and not seen, and says which page it leads to', () => {
    const at = { x: 1, y: 2, width: 3, height: 4 };
    const link = { kind: 'link', box: at, to: { page: 3 }, source: 'marks[0]' } as const;
    const anchor = root(link).querySelector('a')!;
    expect(attributesOf(anchor)).toEqual({
      ...{ href: '#page-3', 'data-page': '3', 'data-path': 'marks[0]', id: 'marks.0' },
    });
    expect(attributesOf(anchor.firstElementChild!)).toEqual({
      ...{ x: '1', y: '2', width: '3', height: '4', fill: 'none', 'pointer-events': 'all' },
    });
  });
});
