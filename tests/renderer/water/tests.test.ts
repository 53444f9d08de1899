// @vitest-environment jsdom
import {
  all,
  button,
  clear,
  click,
  one,
  openFolder,
  said,
  settled,
  show,
  texts,
  type,
} from '../mounted.ts';
import './noSizes.ts';
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../core/record/schema.ts';
import SafeRateView from '../../../renderer/water/SafeRateView.svelte';
import Tests from '../../../renderer/water/Tests.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

const demo = JSON.parse(readFileSync('demo-data/hand-drilled-32m.json', 'utf8')) as WellRecord;
let folder: Folder;

function lay(view: unknown, record: Partial<WellRecord> = demo, readOnly = false) {
  folder = openFolder(record, readOnly);
  show(view, { folder });
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

const grips = () => all('[role=slider]');
const press = async (grip: HTMLElement, key: string) => {
  grip.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
  await settled();
};

describe('what the tests say', () => {
  it('goes test by test and method by method', () => {
    lay(Tests);
    expect(texts('h4')).toEqual([
      'Test 1 – step test',
      'Test 2 – constant rate',
      'Test 3 – recovery',
    ]);
    expect(texts('h5')).toContain('Straight line (Cooper and Jacob)');
    expect(texts('h5')).toContain('Recovery (Theis)');
  });

  it('gives values with unit and interval, and checks with a sign that needs no colour', () => {
    lay(Tests);
    const table = one('table[aria-label="Straight line (Cooper and Jacob)"]');
    expect(said(table)).toMatch(/transmissivity T58\.3 m²\/d57\.6 to 59 \(95 %/);
    const checks = one('ul[aria-label="Checks"]');
    expect(said(checks)).toMatch(/[✓✗] (not )?met:/);
  });

  it('has a table of the readings for who cannot see the plots', async () => {
    lay(Tests);
    const details = all('details').filter((each) => said(each).startsWith('Readings as a table'));
    (details[1] as HTMLDetailsElement).open = true;
    details[1]!.dispatchEvent(new Event('toggle'));
    await settled();
    const rows = [...details[1]!.querySelectorAll('tbody tr')];
    expect(rows).toHaveLength(25);
    // 11.21 m read at the first minute, 10.27 m at rest.
    expect(said(rows[0]!)).toMatch(/^110\.760\.942\.4/);
  });

  it('speaks the language in use', () => {
    speech.language = 'fr';
    lay(Tests);
    expect(said(document.body)).toContain('58,3 m²/j');
    speech.language = 'pt';
    expect(texts('figcaption')).toBeDefined();
  });

  it('says that there is none', () => {
    lay(Tests, {});
    expect(said(document.body)).toBe('No pumping test stands in the record.');
  });

  it('names what is missing and leads to its field', async () => {
    lay(Tests, { tests: [{ kind: 'constantRate' }] });
    const [first] = all('li button');
    await click(first!);
    expect(folder.goal?.path).toMatch(/^tests\[0\]/);
  });
});

describe('the straight part', () => {
  it('is typed in minutes, kept in the record, and left to the program again', async () => {
    lay(Tests);
    await type('tests[1].window.from', '10');
    await type('tests[1].window.to', '100');
    expect(folder.desk.record.tests?.[1]?.window).toEqual({ from: 10, to: 100 });
    expect(said(document.body)).toContain('from 10 to 100 min; chosen by hand');
    await click(button('Leave the choice to the program'));
    expect(folder.desk.record.tests?.[1]).not.toHaveProperty('window');
  });

  it('is moved by keys from reading to reading, one step of undo each', async () => {
    lay(Tests);
    const [from, to] = grips();
    expect(from!.getAttribute('aria-valuetext')).toBe('3 min');
    await press(from!, 'ArrowRight');
    expect(folder.desk.record.tests?.[1]?.window).toEqual({ from: 4, to: 360 });
    await press(to!, 'ArrowLeft');
    expect(folder.desk.record.tests?.[1]?.window).toEqual({ from: 4, to: 300 });
    folder.undo();
    await settled();
    expect(folder.desk.record.tests?.[1]?.window).toEqual({ from: 4, to: 360 });
  });

  it('of a recovery runs against the axis: its right end is its start', async () => {
    lay(Tests);
    const [left, right] = grips().slice(2);
    expect(left!.getAttribute('aria-label')).toBe('End of the straight part');
    await press(right!, 'ArrowLeft');
    expect(folder.desk.record.tests?.[2]?.window).toEqual({ from: 3, to: 240 });
  });

  it('cannot be moved in an archive that is only read', () => {
    lay(Tests, demo, true);
    expect(grips()).toEqual([]);
  });
});

describe('the safe rate', () => {
  it('is told with its interval, its assumptions, and where its inputs stand', async () => {
    lay(SafeRateView);
    expect(said(one('table[aria-label="Safe rate in the dry season"]'))).toMatch(
      /rate that uses up the drawdown[\d.]+ m³\/h[\d.]+ to [\d.]+ \(95 %/,
    );
    expect(texts('li').join(' ')).toContain('No rain reaches the aquifer in that time.');
    await click(one('button[aria-label="Go to the field: Intake of the pump"]'));
    expect(folder.goal?.path).toBe('pump.intake');
  });

  it('names what it still needs', () => {
    lay(SafeRateView, { tests: [] });
    expect(texts('li').length).toBeGreaterThan(0);
  });
});
