// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { paintPage } from '../../../renderer/paint/paintPage.ts';
import { markSource, pathAtPoint } from '../../../renderer/paint/source.ts';
import { drawing, line, page, text } from '../../core/paint/sample.ts';

let svg: SVGSVGElement;
beforeEach(() => {
  svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  document.body.replaceChildren(svg);
  const items = [
    line(0, 0, 9, 9),
    {
      kind: 'group',
      source: 'log[1]',
      items: [text('clay', 5, 5, { source: 'log[1].words' }), line(1, 1, 2, 2)],
    } as const,
    text('other', 5, 9, { source: 'log[10].words' }),
    text('none', 5, 9, { source: 'logbook' }),
  ];
  paintPage(svg, drawing([page(items)]), 0);
});

const marked = () => [...svg.querySelectorAll('.marked')].map((one) => one.textContent);

describe('a click on the sheet', () => {
  const at = (target: EventTarget | null) => pathAtPoint({ target });

  it('leads to the field of what was hit', () => {
    expect(at(svg.querySelector('text'))).toBe('log[1].words');
  });

  it('leads to the field of the group where the item has none', () => {
    expect(at(svg.querySelector('g path'))).toBe('log[1]');
  });

  it('leads nowhere beside the items', () => {
    expect(at(svg)).toBeUndefined();
    expect(at(svg.querySelector('path'))).toBeUndefined();
    expect(at(null)).toBeUndefined();
    expect(at(document)).toBeUndefined();
  });
});

describe('the mark of a field', () => {
  it('is on the field and on its parts, not on those whose name merely begins alike', () => {
    markSource(svg, 'log[1]');
    expect(marked()).toEqual(['clay', 'clay']);
    markSource(svg, 'log');
    expect(marked()).toEqual(['clay', 'clay', 'other']);
  });

  it('moves on and is taken away', () => {
    markSource(svg, 'log[1]');
    markSource(svg, 'logbook');
    expect(marked()).toEqual(['none']);
    markSource(svg, undefined);
    expect(marked()).toEqual([]);
  });

  it('is on all for the whole record', () => {
    markSource(svg, '');
    expect(marked()).toHaveLength(4);
  });
});
