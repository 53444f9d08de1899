import type { View } from '../../../../../core/drawing/parts/columns.ts';
import { middleOf } from '../../../../../core/drawing/parts/columns.ts';
import { resolve } from '../../../model/well.ts';

/** A hole of 250 mm to 6 m and of 160 mm to 20 m, with a string of 110 mm in it. */
export const built = resolve({
  bore: {
    sections: [
      { from: 0, to: 6, diameter: 250 },
      { from: 6, to: 20, diameter: 160 },
    ],
    depthReached: 20,
  },
  strings: [
    {
      components: [
        { kind: 'cap', outside: 110, length: 0.1 },
        { kind: 'screen', outside: 110, wall: 5, length: 6, slotWidth: 0.75, slotSpacing: 6 },
        { kind: 'plain', outside: 110, wall: 5, length: 14.4, centralisers: [7] },
      ],
      set: { by: 'bottom', depth: 20 },
    },
  ],
  annulus: [
    { from: 0, to: 3, fill: 'cementGrout' },
    { from: 3, to: 20, fill: 'gravelPack' },
  ],
  levels: [
    { reading: 5.2, datum: 'ground', state: 'static', at: '2026-01-10T08:00:00+01:00' },
    { reading: 4.9, datum: 'ground', state: 'static', at: '2026-01-12T08:00:00+01:00' },
    { reading: 7.5, datum: 'ground', state: 'pumping' },
    { reading: 9.1, datum: 'ground', state: 'pumping' },
  ],
  pump: { kind: 'deepwellLever', intake: 12, cylinderTop: 11, bodyDiameter: 70, riserDiameter: 40 },
});

/** Where a diameter's edges must stand: half of it from the centre line, at the stated scale. */
export function edgesOf(view: View, diameterMm: number): [number, number] {
  const half = diameterMm / 2 / view.widthScale!;
  const centre = middleOf(view.columns.section);
  return [centre - half, centre + half];
}
