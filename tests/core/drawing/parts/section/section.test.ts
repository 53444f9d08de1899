import { expect, it } from 'vitest';
import { drawSection } from '../../../../../core/drawing/parts/section/section.ts';
import { kit, viewOf } from '../../sample.ts';
import { built } from './well.ts';

it('the section is clipped to its column in the body, and painted back to front', () => {
  const view = viewOf({ fromM: -0.6 });
  const drawn = drawSection(kit, built, undefined, view);
  const { x, width } = view.columns.section;
  expect(drawn).toMatchObject({ clip: { x, width, y: view.body.y, height: view.body.height } });
  const names =
    drawn.kind === 'group' ? drawn.items.map((one) => one.kind === 'group' && one.name) : [];
  expect(names.filter(Boolean)).toEqual([
    'annulus',
    'boreWall',
    'string',
    'centralisers',
    'pump',
    'waterLevels',
    'surface',
  ]);
});
