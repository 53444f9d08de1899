// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import type { PageAxis } from '../../../../core/drawing/items.ts';
import { all, button, clear, click, one, openFolder, press, said, show } from '../../mounted.ts';
import MarkCard from '../../../../renderer/sheet/marks/MarkCard.svelte';
import MarksLayer from '../../../../renderer/sheet/marks/MarksLayer.svelte';

afterEach(clear);

const axis: PageAxis = {
  box: { x: 20, y: 20, width: 180, height: 200 },
  fromM: 0,
  toM: 20,
  stretches: [{ fromM: 0, toM: 20, top: 25 }],
  mmPerM: 5,
  spans: {
    water: { x: 29, width: 9 },
    ground: { x: 38, width: 14 },
    section: { x: 138, width: 37 },
  },
};

const gapped = () =>
  openFolder({
    log: [
      { from: 0, to: 3 },
      { from: 4, to: 9 },
      { from: 8, to: 12 },
    ],
    bore: { sections: [{ from: 0, to: 12, diameter: 150 }], depthReached: 12 },
  });

function showMarks(opened: string[] = []) {
  const folder = gapped();
  const open = ({ finding }: { finding: { code: string } }) => opened.push(finding.code);
  show(MarksLayer, { folder, axes: [axis], k: 3, open });
  return folder;
}

describe('marks on the drawing', () => {
  it('are one for each finding with a depth, named by weight, depth and title', () => {
    const folder = showMarks();
    const names = all('[data-mark]').map((each) => each.getAttribute('aria-label'));
    expect(names).toHaveLength(folder.findings.filter((one) => one.fromM !== undefined).length);
    expect(names.some((name) => /at 3\.00 m to 4\.00 m: /.test(name ?? ''))).toBe(true);
  });

  it('tell their weight by shape and sign as well as by colour', () => {
    showMarks();
    const signs = all('[data-mark]').map((each) => [
      ['error', 'warning', 'note'].find((severity) => each.classList.contains(severity)),
      said(each.querySelector('text')!),
      each.querySelector('.sign')!.getAttribute('d'),
    ]);
    const weights = new Set(signs.map(([severity]) => severity));
    expect(weights.size).toBeGreaterThan(1);
    for (const part of [1, 2])
      expect(new Set(signs.map((each) => each[part])).size).toBe(weights.size);
  });

  it('are one tab stop, gone through by arrows and opened by Enter or a click', async () => {
    const opened: string[] = [];
    showMarks(opened);
    expect(all('[data-mark][tabindex="0"]')).toHaveLength(1);
    one<SVGElement>('[data-mark][tabindex="0"]').focus();
    await press('ArrowDown');
    expect(document.activeElement).toBe(all('[data-mark]')[1]);
    await press('Enter');
    one('[data-mark]').dispatchEvent(new MouseEvent('click', { bubbles: true }));
    expect(opened).toEqual(
      [all('[data-mark]')[1]!, all('[data-mark]')[0]!].map((each) => each.dataset['mark']),
    );
  });
});

describe('a finding laid open', () => {
  const deeds: string[] = [];
  function lay() {
    deeds.length = 0;
    const folder = gapped();
    const finding = folder.findings.find(({ code }) => code === 'log.gap')!;
    const props = { x: 10, y: 10, go: () => deeds.push('go'), close: () => deeds.push('close') };
    show(MarkCard, { finding, practice: folder.practice, ...props });
  }

  it('says what is so, why it matters, what to do and where it comes from', () => {
    lay();
    expect(one('[role=dialog]').getAttribute('aria-labelledby')).not.toBeNull();
    expect(all('dt').map(said)).toEqual(['Why it matters', 'What to do', 'Source']);
    for (const text of all('dd').map(said)) expect(text).not.toBe('');
    expect(said(one('.depths'))).toBe('3.00 m to 4.00 m');
  });

  it('takes the keyboard, leads to its field, and closes with Escape', async () => {
    lay();
    expect(document.activeElement).toBe(button('Go to the field'));
    await click(button('Go to the field'));
    button('Close').focus();
    await press('Escape');
    expect(deeds).toEqual(['go', 'close']);
  });
});
