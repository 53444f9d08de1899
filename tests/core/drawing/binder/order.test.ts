import { expect, it } from 'vitest';
import { districtsOf, inBinderOrder } from '../../../../core/drawing/binder/order.ts';

const well = (district: string, village: string, number: string) => ({
  id: `${district}${village}${number}`,
  district,
  village,
  number,
  name: '',
});

it('puts wells in order of district, village and number as people count', () => {
  const wells = [
    well('B', 'Lemo', 'KB-10'),
    well('', 'Lemo', 'KB-1'),
    well('B', 'Lemo', 'KB-2'),
    well('A', 'Zina', 'KB-7'),
    well('B', 'Ama', 'KB-9'),
  ];
  expect(inBinderOrder(wells).map(({ number }) => number)).toEqual([
    'KB-7',
    'KB-9',
    'KB-2',
    'KB-10',
    'KB-1',
  ]);
});

it('gathers them by district', () => {
  const found = districtsOf([well('A', 'x', '1'), well('A', 'y', '2'), well('', 'z', '3')]);
  expect(found.map(({ name, wells }) => [name, wells.length])).toEqual([
    ['A', 2],
    ['', 1],
  ]);
});
