import { describe, expect, it } from 'vitest';
import { labelsOf } from '../../core/binding/labels.ts';
import { placesOf } from '../../core/binding/places.ts';
import { planBinder, type Content, type Plan, type Unit } from '../../core/binding/plan.ts';
import { roman } from '../../core/binding/roman.ts';

const front = (count: number): Unit[] =>
  Array.from({ length: count }, (_, at) => [{ kind: 'front', at }]);

const well = (wellId: string, pages: number): Content[] =>
  Array.from({ length: pages }, (_, at) => ({ kind: 'well', wellId, at }));

/** Wells of some pages each, the first behind a divider. */
const wells = (...pages: number[]): Unit[] =>
  pages.map((count, at) => [
    ...(at === 0 ? [{ kind: 'divider', district: 'Tamaro' } as const] : []),
    ...well(`w${at}`, count),
  ]);

/** First letter of what a page shows, and its number. */
const told = ({ volumes }: Plan) =>
  volumes.map(({ pages }) =>
    pages
      .map(({ shows, folio }) => {
        const said = folio ? (folio.style === 'roman' ? roman(folio.number) : folio.number) : '';
        return `${shows.kind.slice(0, 1)}${said}`;
      })
      .join(' '),
  );

describe('a plan', () => {
  it('counts pages before the wells in roman numbers and the others in arabic ones', () => {
    const units = [...front(2), ...wells(2, 1), [{ kind: 'back', at: 0 } as const]];
    const plan = planBinder(units, { mostPages: 250, duplex: false });
    expect(told(plan)).toEqual(['ci fii fiii d1 w2 w3 w4 b5']);
    expect(plan.counted).toEqual({ roman: 3, arabic: 5 });
  });

  it('puts odd numbers on the right of a leaf where both sides are printed', () => {
    const plan = planBinder([...front(2), ...wells(2)], { mostPages: 250, duplex: true });
    expect(told(plan)).toEqual(['ci fii fiii biv d1 w2 w3']);
  });

  it('cuts between wells into as few volumes as do, alike thick, each behind a cover', () => {
    const plan = planBinder(wells(4, 5, 5, 5), { mostPages: 12, duplex: false });
    expect(told(plan)).toEqual([
      'ci d1 w2 w3 w4 w5 w6 w7 w8 w9 w10',
      'c w11 w12 w13 w14 w15 w16 w17 w18 w19 w20',
    ]);
    expect(plan.volumes.map(({ fromPage, toPage }) => [fromPage, toPage])).toEqual([
      [1, 10],
      [11, 20],
    ]);
  });

  it('keeps the sides of leaves in later volumes too', () => {
    for (const pages of [4, 5])
      for (const { pages: own } of planBinder(wells(pages, 5, 6), { mostPages: 10, duplex: true })
        .volumes)
        own.forEach(({ folio }, at) => {
          if (folio) expect(folio.number % 2).toBe((at + 1) % 2);
        });
  });

  it('gives a well that is longer than a volume one of its own', () => {
    const plan = planBinder(wells(2, 30, 2), { mostPages: 10, duplex: false });
    expect(plan.volumes.map(({ pages }) => pages.length)).toEqual([4, 31, 3]);
  });
});

describe('places of a plan', () => {
  const plan = planBinder([...front(1), ...wells(4, 5, 5, 5)], { mostPages: 12, duplex: false });
  const places = placesOf(plan, new Map([['contents', { kind: 'front', at: 0 }]]));

  it('lead to pages of the whole binder, and say them by volume', () => {
    expect(places.partAt('contents')).toBe(2);
    expect(places.says(places.partAt('contents'))).toBe('1/ii');
    expect(places.districtAt('Tamaro')).toBe(3);
    expect(places.spotOf(places.pageOf('w3'))).toMatchObject({ volume: 2 });
    expect(places.says(places.pageOf('w3'))).toMatch(/^2\/\d+$/);
  });

  it('throw on what the binder has not', () => {
    expect(() => places.pageOf('nobody')).toThrow('no well nobody');
  });

  it('stand in the names of the pages', () => {
    expect(labelsOf(plan.volumes[0]!, 'Cover')).toEqual([
      { page: 1, style: 'roman', from: 1 },
      { page: 3, style: 'arabic', from: 1 },
    ]);
    expect(labelsOf(plan.volumes[1]!, 'Cover')[0]).toEqual({ page: 1, prefix: 'Cover' });
  });
});

it('small numbers are written in roman letters', () => {
  expect([1, 4, 9, 14, 40, 90, 400, 1999].map(roman)).toEqual(
    'i iv ix xiv xl xc cd mcmxcix'.split(' '),
  );
});
