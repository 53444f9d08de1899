import type { PaperMm } from '../../../base/units.ts';
import { wrapped, type TextLook } from '../../letters.ts';
import type { Block } from '../../parts/block.ts';
import { lineHeight } from '../../pens.ts';
import { drawForbidden, drawPictogram } from '../../pictograms/pictogram.ts';
import { group } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { blockTitle, said } from './text.ts';

const signSide: PaperMm = 18;
const textAt: PaperMm = 23;
const gap: PaperMm = 5;
const look: TextLook = { lettering: 'large' };
const linePitch: PaperMm = lineHeight('large');

/** What people do and do not do beside a hole that nobody draws from. */
export function layClosedHole(kit: CommitteeKit, width: PaperMm): Block {
  const { title, each } = kit.own.closed;
  const laid = each.map(({ sign, says }) => {
    const lines = wrapped(kit, says, width - textAt, look);
    return { sign, lines, height: Math.max(signSide, lines.length * linePitch) + gap };
  });
  return {
    height: kit.spacing.title + 2 + laid.reduce((sum, { height }) => sum + height, 0),
    draw: (x, y) => {
      let top = y + kit.spacing.title + 2;
      const rules = laid.flatMap(({ sign, lines, height }) => {
        const place = { x, y: top, side: signSide };
        const forbidden = sign === 'rubbish' || sign === 'dig';
        const first = top + Math.max(0, (signSide - lines.length * linePitch) / 2) + 4.6;
        top += height;
        return [
          forbidden ? drawForbidden(sign, place) : drawPictogram(sign, place),
          ...lines.flatMap((one, at) => said(kit, one, x + textAt, first + at * linePitch, look)),
        ];
      });
      return [...blockTitle(kit, title, x, y, width), group('closed', rules)];
    },
  };
}
