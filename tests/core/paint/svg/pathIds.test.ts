import { describe, expect, it } from 'vitest';
import { withPathIds } from '../../../../core/paint/svg/pathIds.ts';

const shows = (path: string) => ({ name: 'path', attributes: { 'data-path': path } });

describe('ids of what shows a field of the record', () => {
  it('are made of the field’s path, numbered where more than one shows it', () => {
    const tree = {
      name: 'g',
      attributes: {},
      children: [shows('log[3].from'), shows('log[3].from'), shows('site.spot')],
    };
    const ids = withPathIds(tree).children!.map(({ attributes }) => attributes['id']);
    expect(ids).toEqual(['log.3.from', 'log.3.from-2', 'site.spot']);
  });

  it('leave all else as it is', () => {
    const tree = { name: 'svg', attributes: { width: '1mm' }, children: [shows('notes')] };
    const { attributes, children } = withPathIds(tree);
    expect(attributes).toEqual({ width: '1mm' });
    expect(children![0]!.attributes).toEqual({ id: 'notes', 'data-path': 'notes' });
    expect(withPathIds({ name: 'text', attributes: {}, text: 'a' }).text).toBe('a');
  });
});
