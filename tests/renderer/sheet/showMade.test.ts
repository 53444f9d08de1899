import { createHash } from 'node:crypto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { showMade } from '../../../renderer/sheet/showMade.ts';

const open = vi.fn();
const pdf = Buffer.from('%PDF-1.7 \u00e9');

function browser(pdfViewerEnabled: boolean) {
  vi.stubGlobal('navigator', { pdfViewerEnabled });
  vi.stubGlobal('window', { open });
}

beforeEach(() => open.mockReset());
afterEach(() => vi.unstubAllGlobals());

it('opens a tab on the PDF by its hash', async () => {
  browser(true);
  open.mockReturnValue({});
  expect(await showMade(pdf.toString('base64'))).toBe(true);
  const hash = createHash('sha256').update(pdf).digest('hex');
  expect(open).toHaveBeenCalledExactlyOnceWith(`/made/${hash}`, '_blank');
});

it('says so where the browser opens none', async () => {
  browser(true);
  open.mockReturnValue(null);
  expect(await showMade(pdf.toString('base64'))).toBe(false);
});

it('asks for no tab where the browser has no viewer for PDFs', async () => {
  browser(false);
  expect(await showMade(pdf.toString('base64'))).toBe(false);
  expect(open).not.toHaveBeenCalled();
});
