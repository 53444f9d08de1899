import { JSDOM } from 'jsdom';
import type { Point, ReadPage, ReadPath, ReadText } from './page.ts';

function numberOf(element: Element, name: string): number {
  return Number.parseFloat(element.getAttribute(name) ?? '0');
}

function readText(element: Element): ReadText {
  const [turn = 0] = /rotate\((\S+)/.exec(element.getAttribute('transform') ?? '')?.slice(1) ?? [];
  return {
    text: element.textContent,
    x: numberOf(element, 'x'),
    y: numberOf(element, 'y'),
    em: numberOf(element, 'font-size'),
    turn: Number(turn),
  };
}

function pointsOf(d: string): Point[] {
  const numbers = [...d.matchAll(/-?\d+(\.\d+)?/g)].map(([text]) => Number(text));
  return numbers.flatMap((x, at) => (at % 2 === 0 ? [[x, numbers[at + 1]!] as const] : []));
}

function readPath(element: Element): ReadPath[] {
  const filled = element.getAttribute('fill') !== 'none';
  const stroked = element.hasAttribute('stroke');
  const points = pointsOf(element.getAttribute('d') ?? '');
  return filled || stroked
    ? [{ filled, stroked, stroke: numberOf(element, 'stroke-width'), points }]
    : [];
}

/** The root element of an SVG file, read as XML; throws where it is not well formed. */
export function openSvg(file: string): Element {
  return new JSDOM(file, { contentType: 'image/svg+xml' }).window.document.documentElement;
}

/** Texts and outlines of a drawing file, those of its definitions left out. */
export function readSvg(file: string): ReadPage {
  const root = openSvg(file);
  const shown = (selector: string) =>
    [...root.querySelectorAll(selector)].filter((element) => !element.closest('defs'));
  return {
    width: numberOf(root, 'width'),
    height: numberOf(root, 'height'),
    texts: shown('text').map(readText),
    paths: shown('path').flatMap(readPath),
  };
}
