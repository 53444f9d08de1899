// @vitest-environment jsdom
import { all, clear, click, one, openFolder, settled, show, texts } from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import type { Site } from '../../../core/record/site.ts';
import SitingView from '../../../renderer/siting/SitingView.svelte';
import { reachesFor, usualReach } from '../../../core/drawing/parts/sitePlan/reach.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

let folder: Folder;

function lay(surroundings: NonNullable<Site['surroundings']>) {
  folder = openFolder({
    site: { surroundings },
    bore: { depthReached: 20 },
    log: [{ from: 0, to: 20, material: 'sand', grain: 'coarse' }],
    levels: [{ reading: 4, datum: 'ground', state: 'static' }],
  });
  show(SitingView, { folder });
}
/** Where a mark stands, as the picture counts: right and down. */
function markAt(number: string): [number, number] {
  const mark = all('svg g').find((each) => each.querySelector('text')?.textContent === number)!;
  const [x, y] = /translate\(([-\d.e]+) ([-\d.e]+)\)/
    .exec(mark.getAttribute('transform')!)!
    .slice(1);
  return [Number(x), Number(y)];
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

describe('the plan of the site', () => {
  it('has north up, to scale', () => {
    lay([
      { kind: 'latrine', distance: 50, direction: 0 },
      { kind: 'livestock', distance: 25, direction: 90 },
    ]);
    const [north, east] = [markAt('1'), markAt('2')];
    expect(north[0]).toBeCloseTo(0);
    expect(north[1]).toBeLessThan(0);
    expect(east[1]).toBeCloseTo(0);
    expect(east[0]).toBeCloseTo(-north[1] / 2);
  });

  it('keeps near things apart, and points to what lies beyond', async () => {
    lay([
      { kind: 'building', distance: 14, direction: 260 },
      { kind: 'openWater', distance: 310, direction: 95 },
    ]);
    expect(one<HTMLSelectElement>('select').value).toBe('100');
    expect(texts('.soft')).toContain('beyond the plan');
    one<HTMLSelectElement>('select').value = '400';
    one('select').dispatchEvent(new Event('change', { bubbles: true }));
    await settled();
    expect(texts('.soft')).not.toContain('beyond the plan');
  });

  it('says what stands nearer than the practice asks for', () => {
    // The practice for hand-drilled wells asks for 30 m to where animals are kept (common practice).
    lay([{ kind: 'livestock', distance: 24, direction: 75 }]);
    expect(texts('tbody tr')[0]).toMatch(/livestock.*nearer than asked for ?24 ?30 ?75°/);
  });

  it('lists what has no direction or no distance apart, and leads there', async () => {
    lay([{ kind: 'latrine', distance: 20 }, { kind: 'soakaway' }]);
    expect(all('svg')).toEqual([]);
    await click(all('button').find((each) => each.textContent.includes('latrine'))!);
    expect(folder.goal?.path).toBe('site.surroundings[0].direction');
    await click(all('button').find((each) => each.textContent.includes('soakaway'))!);
    expect(folder.goal?.path).toBe('site.surroundings[1].distance');
  });
});

describe('travel times', () => {
  it('are wide, with what is assumed, and never said to be enough', async () => {
    lay([{ kind: 'latrine', distance: 20, direction: 10 }]);
    // t = d n / (K i): 20 · 0.2 / (100 · 0.01) = 4 days to 20 · 0.35 / (20 · 0.001) = 350 days, by the
    // conductivity of coarse sand after Bouwer 1978 and its specific yield after Johnson 1967.
    const line = all('.formula summary').find((each) => each.textContent.includes('latrine'))!;
    expect(line.textContent).toMatch(/4\sdays – 350\sdays/);
    await click(line);
    expect(line.parentElement!.textContent).toContain('Bouwer');
    expect(texts('body').join(' ')).toContain('never shows that one is enough');
    expect(texts('li').join(' ')).toContain('straight way');
  });
});

describe('the reach of a plan', () => {
  it('goes up to the first that holds all, and begins with a hundred metres at most', () => {
    expect(reachesFor(46)).toEqual([25, 50]);
    expect(usualReach(46)).toBe(50);
    expect(usualReach(310)).toBe(100);
    expect(reachesFor(5000).at(-1)).toBe(800);
  });

  it('tells the position on the UTM grid, where there is one', () => {
    folder = openFolder({ site: { latitude: 12.3714, longitude: -1.5197 } });
    show(SitingView, { folder });
    expect(texts('p')[0]).toBe(
      'On the UTM grid (WGS 84): zone 30N, 660937 m east, 1368068 m north',
    );
  });
});
