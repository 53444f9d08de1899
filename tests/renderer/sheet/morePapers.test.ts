// @vitest-environment jsdom
import { button, clear, click, openFolder, press, settled, show, texts } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PageHost } from '../../../core/contract/host.ts';
import ExportButton from '../../../renderer/sheet/ExportButton.svelte';

const handed = vi.hoisted(() => vi.fn());
const shown = vi.hoisted(() => vi.fn());
vi.mock('../../../renderer/sheet/download.ts', () => ({ download: handed }));
vi.mock('../../../renderer/sheet/showMade.ts', () => ({ showMade: shown }));

const paper = { fileName: 'a.pdf', pdf: 'JVBERi0=', findings: [], unrevised: false };
let asked: [string, unknown][];
let answers: Record<string, unknown>;
const host = {
  async send(name: string, args: unknown) {
    asked.push([name, args]);
    const value = answers[name];
    return value instanceof Error
      ? { ok: false, error: { code: 'told', sentence: value.message } }
      : { ok: true, value };
  },
  onEvent: () => () => undefined,
} as unknown as PageHost;

async function open(parts: object = {}) {
  const folder = openFolder({}, true);
  show(ExportButton, { host, folder, paper: 'A4', language: 'en', page: 2, ...parts });
  await click(button('More ▾'));
}

/** Chooses an entry; gives what the service was asked, without the printers. */
async function choose(entry: string) {
  await click(button(entry));
  await settled();
  return asked.filter(([name]) => name !== 'printing.ways');
}

beforeEach(() => {
  asked = [];
  handed.mockClear();
  shown.mockReset().mockResolvedValue(true);
  const drawing = { fileName: 'a-2.svg', data: 'PHN2', mediaType: 'image/svg+xml' };
  answers = {
    'papers.asBuilt': paper,
    'papers.committee': paper,
    'papers.checkPage': paper,
    'papers.drawingFile': { ...drawing, unrevised: false },
    'printing.ways': { printers: [], viewer: false },
    'printing.print': {},
  };
});
afterEach(clear);

describe('the list behind More', () => {
  it.each([
    ['This page as SVG', 'svg'],
    ['This page as PNG, 300 dpi', 'png'],
    ['This page as DXF', 'dxf'],
  ])('has “%s”, of the page in sight', async (entry, format) => {
    await open();
    const wish = { kind: 'asBuilt', paper: 'A4', language: 'en' };
    const [[name, args] = []] = await choose(entry);
    expect([name, args]).toMatchObject([
      'papers.drawingFile',
      { id: 'w', paper: wish, page: 2, format },
    ]);
    expect(handed).toHaveBeenCalledWith('a-2.svg', 'PHN2', 'image/svg+xml');
    expect(texts('[role=status]')).toEqual(['a-2.svg was made.']);
  });

  it('has the PDF with the record inside', async () => {
    await open();
    const [[, args] = []] = await choose('PDF with the record inside');
    expect(args).toMatchObject({ id: 'w', paper: 'A4', attachRecord: true });
  });

  it('has both languages on one A3 where the committee’s sheet has two', async () => {
    await open();
    expect(texts('.panel button')).not.toContain('PDF, both languages side by side on A3');
    await clear();
    await open({ paper: 'committee', second: 'fr' });
    const asking = await choose('PDF, both languages side by side on A3');
    expect(asking).toEqual([
      ['papers.committee', { id: 'w', languages: ['en', 'fr'], paper: 'A3' }],
    ]);
  });

  it('has the check page, to be printed at actual size', async () => {
    await open({ paper: 'A3', language: 'pt' });
    const asking = await choose('Check page for the printer');
    expect(asking).toEqual([['papers.checkPage', { paper: 'A3', language: 'pt' }]]);
    expect(texts('[role=status]')[0]).toContain('at actual size, 100 %');
  });

  it('has the browser show the PDF where the host does not print, and says at what size to print it', async () => {
    await open();
    const asking = await choose('Print');
    expect(asking.map(([name]) => name)).toEqual(['papers.asBuilt']);
    expect(shown).toHaveBeenCalledExactlyOnceWith('JVBERi0=');
    expect(handed).not.toHaveBeenCalled();
    expect(texts('[role=status]')).toEqual([
      'a.pdf is open in a new tab. Print the PDF at actual size, 100 %, not fitted to the page.',
    ]);
  });

  it('hands the PDF over where the browser shows none, and says the same', async () => {
    shown.mockResolvedValue(false);
    await open();
    const asking = await choose('Print');
    expect(asking.map(([name]) => name)).toEqual(['papers.asBuilt']);
    expect(handed).toHaveBeenCalledWith('a.pdf', 'JVBERi0=', 'application/pdf');
    expect(texts('[role=status]')[0]).toContain('at actual size, 100 %');
  });

  it('prints on a printer of this computer, or says why not', async () => {
    answers['printing.ways'] = { printers: [{ name: 'Office', usual: true }], viewer: true };
    await open();
    const asking = await choose('Print on Office');
    expect(asking.at(-1)).toEqual([
      'printing.print',
      { fileName: 'a.pdf', pdf: 'JVBERi0=', printer: 'Office' },
    ]);
    expect(texts('[role=status]')).toEqual(['The sheet was sent to Office at actual size.']);
    answers['printing.print'] = new Error('No paper.');
    await click(button('More ▾'));
    await choose('Print');
    expect(texts('[role=status]')).toEqual(['Nothing was printed: No paper.']);
    expect(handed).not.toHaveBeenCalled();
    expect(shown).not.toHaveBeenCalled();
  });

  it('is walked by arrows and closed by Escape', async () => {
    await open();
    button('More ▾').focus();
    await press('ArrowDown');
    expect(document.activeElement?.textContent).toBe('This page as SVG');
    await press('Escape');
    expect(document.activeElement).toBe(button('More ▾'));
    expect(button('More ▾').getAttribute('aria-expanded')).toBe('false');
  });
});
