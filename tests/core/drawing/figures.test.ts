import { expect, it } from 'vitest';
import {
  dayFigure,
  depthFigure,
  litreFigure,
  momentFigure,
  plainFigure,
  rangeFigure,
  significantFigure,
} from '../../../core/drawing/figures.ts';
import { kit } from './sample.ts';

const comma = { ...kit, words: { ...kit.words, decimalMark: ',' as const } };

it('depths stand to the centimetre, ranges with a dash', () => {
  expect(depthFigure(kit, 12.5)).toBe('12.50');
  expect(rangeFigure(kit, 0, 6.305)).toBe('0.00–6.31');
});

it('litres stand to what a sack or tape can tell', () => {
  expect(litreFigure(kit, 4.26)).toBe('4.3');
  expect(litreFigure(kit, 426.4)).toBe('426');
});

it('plain figures have no zeros at their end', () => {
  expect(plainFigure(kit, 110, 1)).toBe('110');
  expect(plainFigure(kit, 0.75, 2)).toBe('0.75');
});

it('measured values stand to three digits, small ones too', () => {
  expect(significantFigure(kit, 88.54)).toBe('88.5');
  expect(significantFigure(kit, 0.00123456)).toBe('0.00123');
  expect(significantFigure(kit, 1234.6)).toBe('1235');
  expect(significantFigure(kit, 0)).toBe('0');
});

it('figures take the decimal mark of their language', () => {
  expect(depthFigure(comma, 12.5)).toBe('12,50');
  expect(plainFigure(comma, 4.2, 1)).toBe('4,2');
});

it('moments stand to the minute as they were written, without a zone', () => {
  expect(momentFigure('2026-03-14T09:40:00+01:00')).toBe('2026-03-14 09:40');
  expect(momentFigure('2026-03-14')).toBe('2026-03-14');
  expect(dayFigure('2026-03-14T23:40:00+01:00')).toBe('2026-03-14');
});
