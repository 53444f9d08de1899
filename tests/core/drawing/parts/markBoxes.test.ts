import { describe, expect, it } from 'vitest';
import { drawMarkBoxes, marksHeight } from '../../../../core/drawing/parts/markBoxes.ts';
import { groupsNamed } from '../../../sheets/placed.ts';
import { kit, pathsOf, pointsOf, textsOf, wordsOf } from '../sample.ts';

const client = {
  role: 'client' as const,
  name: 'Yamélia Ɓossarin',
  organisation: 'Water office',
  on: '2026-01-30',
};

/** Upper left corner and size of the place for all marks. */
const at = { x: 20, y: 230, width: 180, height: marksHeight };

describe('mark boxes', () => {
  it('stay free for each who has not signed', () => {
    const boxes = groupsNamed([drawMarkBoxes(kit, [], {}, at)], 'mark');
    expect(boxes.map((box) => wordsOf(box)[0])).toEqual([
      'Supervisor',
      'Contractor',
      'Client',
      'Committee',
    ]);
    for (const box of boxes) expect(wordsOf(box).slice(1)).toEqual(['Name:', 'Date:']);
  });

  it('share the width between them', () => {
    const boxes = groupsNamed([drawMarkBoxes(kit, [], {}, at)], 'mark');
    const frames = boxes.map((box) => pointsOf(pathsOf(box)[0]!));
    expect(frames.map(([corner]) => corner)).toEqual([20, 65, 110, 155].map((x) => [x, 230]));
    for (const frame of frames) expect(frame[2]![1] - frame[0]![1]).toBe(marksHeight);
  });

  it('stand two by two where the place is as high', () => {
    const corner = { x: 20, y: 166.5, width: 87, height: 33.5 };
    const boxes = groupsNamed([drawMarkBoxes(kit, [], {}, corner)], 'mark');
    const corners = boxes.map((box) => pointsOf(pathsOf(box)[0]!)[0]);
    expect(corners).toEqual([
      [20, 166.5],
      [63.5, 166.5],
      [20, 183.25],
      [63.5, 183.25],
    ]);
  });

  it('say who signed, for whom and when, in the box of the role', () => {
    const boxes = groupsNamed([drawMarkBoxes(kit, [client], {}, at)], 'mark');
    expect(wordsOf(boxes[2]!)).toEqual(['Client', 'Yamélia Ɓossarin, 2026-01-30', 'Water office']);
    expect(textsOf(boxes[2]!)[1]!.source).toBe('marks[0]');
  });

  it('keep a drawn mark in proportion and inside the box', () => {
    const drawn = {
      ...client,
      strokes: [
        [
          [0, 0],
          [100, 40],
        ] as [number, number][],
        [[5, 5]] as [number, number][],
      ],
    };
    const [, , box] = groupsNamed([drawMarkBoxes(kit, [drawn], {}, at)], 'mark');
    const strokes = pathsOf(box!).filter(({ source }) => source === 'marks[0]');
    expect(strokes).toHaveLength(1);
    const [[x, y], [right, foot]] = pointsOf(strokes[0]!) as [[number, number], [number, number]];
    expect((foot - y) / (right - x)).toBeCloseTo(0.4, 9);
    expect(y).toBeGreaterThan(230);
    expect(foot).toBeLessThan(230 + marksHeight);
  });

  it('show the picture of a mark in proportion, on the line, with the name for who cannot see it', () => {
    const pictured = { ...client, kind: 'image' as const, hash: 'a'.repeat(64) };
    const image = { data: 'data:image/png;base64,AA==', width: 300, height: 100 };
    const images = { [pictured.hash]: image };
    const [, , box] = groupsNamed([drawMarkBoxes(kit, [pictured], images, at)], 'mark');
    const [shown] = box!.items.filter((item) => item.kind === 'image');
    expect(shown).toMatchObject({ data: image.data, says: client.name, source: 'marks[0]' });
    expect(shown!.width / shown!.height).toBeCloseTo(3, 9);
    expect(shown!.x + shown!.width).toBeLessThanOrEqual(20 + 3 * 45);
    expect(shown!.y).toBeGreaterThanOrEqual(230);
    expect(shown!.y + shown!.height).toBeLessThan(230 + marksHeight);
    const [, , without] = groupsNamed([drawMarkBoxes(kit, [pictured], {}, at)], 'mark');
    expect(without!.items.some((item) => item.kind === 'image')).toBe(false);
  });
});
