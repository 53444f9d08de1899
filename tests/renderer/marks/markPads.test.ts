// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { all, button, clear, click, one, openFolder, said, settled, show } from '../mounted.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import MarkPads from '../../../renderer/marks/MarkPads.svelte';

const host = { send: () => new Promise(() => undefined) } as unknown as PageHost;
const marks = [
  { role: 'supervisor' as const, name: 'Adéwa Tonou' },
  { role: 'client' as const, name: 'Yamélia Ɓossarin', strokes: [[[1, 1] as [number, number]]] },
];

afterEach(clear);

/** The test's window lays nothing out: the pad is given a place. */
function padAt(at: number): SVGSVGElement {
  const pad = all('figure')[at]!.querySelector('svg')!;
  pad.getBoundingClientRect = () => ({ left: 0, top: 0, width: 200, height: 80 }) as DOMRect;
  pad.setPointerCapture = () => undefined;
  return pad;
}

async function point(pad: Element, kind: string, x: number, y: number) {
  const event = new MouseEvent(kind, { bubbles: true, clientX: x, clientY: y, button: 0 });
  pad.dispatchEvent(event);
  await settled();
}

describe('the pads for marks', () => {
  it('ask for a name where nobody signs yet', () => {
    show(MarkPads, { host, folder: openFolder({}) });
    expect(said(document.body)).toContain('Write who signs');
    expect(all('figure')).toEqual([]);
  });

  it('name who signs, and as what', () => {
    show(MarkPads, { host, folder: openFolder({ marks }) });
    expect(all('svg').map((pad) => pad.getAttribute('aria-label'))).toEqual([
      'Mark of Adéwa Tonou, Supervisor',
      'Mark of Yamélia Ɓossarin, Client',
    ]);
  });

  it('take what is drawn into the record, stroke by stroke, and undo it', async () => {
    const folder = openFolder({ marks });
    show(MarkPads, { host, folder });
    for (const y of [10, 40]) {
      await point(padAt(0), 'pointerdown', 20, y);
      await point(padAt(0), 'pointermove', 100, y);
      await point(padAt(0), 'pointerup', 100, y);
    }
    expect(folder.desk.record.marks?.[0]).toEqual({
      role: 'supervisor',
      name: 'Adéwa Tonou',
      kind: 'drawn',
      strokes: [
        [
          [10, 5],
          [50, 5],
        ],
        [
          [10, 20],
          [50, 20],
        ],
      ],
    });
    folder.undo();
    expect(folder.desk.record.marks?.[0]?.strokes).toHaveLength(1);
  });

  it('make nothing of a mere touch', async () => {
    const folder = openFolder({ marks });
    show(MarkPads, { host, folder });
    await point(padAt(0), 'pointerdown', 20, 20);
    await point(padAt(0), 'pointerup', 20, 20);
    expect(folder.desk.record.marks).toEqual(marks);
  });

  it('are cleared, which leaves who signs', async () => {
    const folder = openFolder({ marks });
    show(MarkPads, { host, folder });
    await click(one<HTMLButtonElement>('[aria-label="Clear: Yamélia Ɓossarin, Client"]'));
    expect(folder.desk.record.marks?.[1]).toEqual({ role: 'client', name: 'Yamélia Ɓossarin' });
    expect(button('Clear').disabled).toBe(true);
  });

  it('are only looked at where the archive is read-only', async () => {
    const folder = openFolder({ marks }, true);
    show(MarkPads, { host, folder });
    await point(padAt(0), 'pointerdown', 20, 10);
    await point(padAt(0), 'pointermove', 100, 10);
    await point(padAt(0), 'pointerup', 100, 10);
    expect(folder.desk.record.marks).toEqual(marks);
    expect(button('Picture …').disabled).toBe(true);
  });
});
