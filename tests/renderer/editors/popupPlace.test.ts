import { describe, expect, it } from 'vitest';
import { popupPlace } from '../../../renderer/editors/popupPlace.ts';

const field = (top: number) => ({ left: 40.4, top, bottom: top + 30, width: 200 });

describe('a list that opens from a field', () => {
  it('stands below it, as wide at least, and no higher than 260 pixels', () => {
    expect(popupPlace(field(100), 800)).toEqual({
      left: '40px',
      minWidth: '200px',
      maxHeight: '260px',
      top: '132px',
    });
  });

  it('stands above it near the foot of the window', () => {
    expect(popupPlace(field(760), 800)).toMatchObject({ bottom: '42px', maxHeight: '260px' });
    expect(popupPlace(field(760), 800)).not.toHaveProperty('top');
  });

  it('takes the room that is there in a low window', () => {
    expect(popupPlace(field(40), 180)).toMatchObject({ top: '72px', maxHeight: '106px' });
  });
});
