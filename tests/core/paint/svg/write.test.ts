import { describe, expect, it } from 'vitest';
import { fontFaces } from '../../../../core/paint/svg/fontFaces.ts';
import { paintSvg } from '../../../../core/paint/svg/write.ts';
import { openSvg } from '../../../reading/svg.ts';
import { box, drawing, everyKind, fonts, line, page, text, trial } from '../sample.ts';

const written = (items: typeof everyKind) => paintSvg(drawing([page(items)]), 0);
const root = (items: typeof everyKind) => openSvg(written(items));

describe('a page as a drawing file', () => {
  it('is as large as the paper, with one unit a millimetre', () => {
    const svg = openSvg(paintSvg(trial, 1));
    expect(svg.getAttribute('width')).toBe('420mm');
    expect(svg.getAttribute('height')).toBe('297.5mm');
    expect(svg.getAttribute('viewBox')).toBe('0 0 420 297.5');
  });

  it('gives lengths to a thousandth of a millimetre, never as minus nought', () => {
    const d = root([line(1 / 3, -0.0001, 1e-9, 20.00049)]).querySelector('path')!;
    expect(d.getAttribute('d')).toBe('M0.333 0L0 20');
  });

  it('says which field of the record each item shows', () => {
    const paths = [...root(everyKind).querySelectorAll('[data-path]')].map(
      (element) => `${element.tagName} ${element.getAttribute('data-path')}`,
    );
    expect(paths).toEqual(['g log[0].soil', 'g log[1]', 'path log[1].to', 'text log[1].words']);
    expect(root(everyKind).querySelector('[data-name]')!.getAttribute('data-name')).toBe(
      'log <column>',
    );
  });

  it('sets text in faces of its own, to the width that was measured', () => {
    const item = text('Office (12)', 20, 30, { face: 'bold', em: 3.5 });
    const element = root([item]).querySelector('text')!;
    expect(element.getAttribute('font-family')).toBe('borefolio-bold');
    expect(element.getAttribute('font-size')).toBe('3.5');
    expect(Number(element.getAttribute('textLength'))).toBeCloseTo(item.width, 3);
    expect(written([item])).toMatch(/text\{font-kerning:none;font-variant-ligatures:none/);
  });

  it('keeps blanks, escapes what XML reserves and drops what it cannot hold', () => {
    const letters = '  <b> & "c" \u0000\ufffe]]> ';
    const file = written([text(letters, 20, 30, { source: 'a"<b>' })]);
    expect(openSvg(file).querySelector('text')!.textContent).toBe('  <b> & "c"   ]]> ');
    expect(openSvg(file).querySelector('text')!.getAttribute('xml:space')).toBe('preserve');
    expect(file).toContain('data-path="a&quot;&lt;b&gt;"');
  });

  it('lays hatches from the corner of the page, each defined once and only when used', () => {
    const patterns = [...root(everyKind).querySelectorAll('pattern')];
    expect(patterns).toHaveLength(1);
    const attributes = Object.fromEntries(
      [...patterns[0]!.attributes].map(({ name, value }) => [name, value]),
    );
    expect(attributes).toMatchObject({ x: '0', y: '0', width: '7', height: '9' });
    expect(attributes).toMatchObject({ patternUnits: 'userSpaceOnUse' });
    expect(root([line(1, 1, 2, 2)]).querySelector('pattern')).toBeNull();
  });

  it('finds a hatch whose key is no word', () => {
    const hatches = { 'sand) & "clay"': trial.hatches['dotted']! };
    const region = { kind: 'region', segments: box(0, 0, 9, 9), hatch: 'sand) & "clay"' } as const;
    const svg = openSvg(paintSvg(drawing([page([region])], { hatches }), 0));
    const id = svg.querySelector('pattern')!.getAttribute('id')!;
    expect(svg.querySelector('g path')!.getAttribute('fill')).toBe(`url(#${id})`);
    expect(id).toMatch(/^[\w-]+$/);
  });

  it('clips a group to its box', () => {
    const svg = root(everyKind);
    const id = svg.querySelector('clipPath')!.getAttribute('id');
    expect(svg.querySelector('[clip-path]')!.getAttribute('clip-path')).toBe(`url(#${id})`);
    const rect = svg.querySelector('clipPath rect')!;
    const sides = ['x', 'y', 'width', 'height'].map((name) => rect.getAttribute(name));
    expect(sides).toEqual(['20', '95', '20', '10']);
  });

  it('leads to pages and to addresses, never to a script', () => {
    const at = { x: 0, y: 0, width: 9, height: 9 };
    const hrefOf = (address: string) =>
      root([{ kind: 'link', box: at, to: { address } }])
        .querySelector('a')!
        .getAttribute('href');
    expect(root(everyKind).querySelector('a')!.getAttribute('href')).toBe('#page-2');
    expect(hrefOf('https://example.org/é x')).toBe('https://example.org/%C3%A9%20x');
    expect(hrefOf('javascript:alert(1)')).toBeNull();
    expect(hrefOf(' javascript:alert(1)')).toBeNull();
  });

  it('carries the font files when told to', () => {
    const file = paintSvg(trial, 0, fontFaces(fonts.files));
    const [, data] = /borefolio-bold;src:url\(data:font\/ttf;base64,([^)]*)\)/.exec(file) ?? [];
    expect(new Uint8Array(Buffer.from(data!, 'base64'))).toEqual(fonts.files.bold);
  });

  it('is refused where the drawing is at fault', () => {
    expect(() => paintSvg(trial, 2)).toThrow('no page with index 2');
    expect(() => written([line(0, Number.NaN, 1, 1)])).toThrow('NaN where a length belongs');
    const lost = { kind: 'region', segments: box(0, 0, 9, 9), hatch: 'lost' } as const;
    expect(() => written([lost])).toThrow('no hatch called lost');
  });
});
