import { describe, expect, it, vi } from 'vitest';
import { ok } from '../../../core/base/result.ts';
import { readFonts } from '../../../electron/files/fonts.ts';
import type { Printing } from '../../../electron/service/printJob.ts';
import { createService } from '../../../electron/service/service.ts';
import { passingIdentities } from '../../../electron/service/identityStore.ts';
import { passingSettings } from '../../../electron/service/settingsFile.ts';
import { openFresh } from '../archive/sample.ts';

const pdf = Buffer.from('%PDF-1.7').toString('base64');

function serviceWith(printing?: Printing) {
  return createService({
    ...{ archive: openFresh(), fonts: readFonts(), settings: passingSettings() },
    identities: passingIdentities(),
    ...{ clock: () => '2025-03-01T10:00:00Z', newId: () => 'a' },
    ...(printing && { printing }),
  });
}

function fakePrinting() {
  return {
    printers: vi.fn(async () => [{ name: 'Office', usual: true }]),
    print: vi.fn(async () => ok(null)),
    show: vi.fn(async () => ok(null)),
  };
}

describe('printing by a host that reaches printers', () => {
  it('tells which there are', async () => {
    expect(await serviceWith(fakePrinting()).call('printing.ways', {})).toEqual({
      ok: true,
      value: { printers: [{ name: 'Office', usual: true }], viewer: true },
    });
  });

  it('prints on the one that is named, and shows the PDF where none is', async () => {
    const printing = fakePrinting();
    const service = serviceWith(printing);
    const job = { fileName: 'a.pdf', pdf: Buffer.from('%PDF-1.7') };
    const printed = await service.call('printing.print', {
      fileName: 'a.pdf',
      pdf,
      printer: 'Office',
    });
    expect(printed).toEqual({ ok: true, value: { printer: 'Office' } });
    expect(printing.print).toHaveBeenCalledExactlyOnceWith(job, 'Office');
    expect(await service.call('printing.print', { fileName: 'a.pdf', pdf })).toEqual({
      ok: true,
      value: {},
    });
    expect(printing.show).toHaveBeenCalledExactlyOnceWith(job);
  });

  it('prints nothing but a PDF, and on no printer that is not there', async () => {
    const printing = fakePrinting();
    const service = serviceWith(printing);
    const odd = { fileName: 'a.pdf', pdf: Buffer.from('#!/bin/sh').toString('base64') };
    expect(await service.call('printing.print', odd)).toMatchObject({ error: { code: 'notAPdf' } });
    const lost = { fileName: 'a.pdf', pdf, printer: 'Attic' };
    expect(await service.call('printing.print', lost)).toMatchObject({
      error: { code: 'noSuchPrinter' },
    });
    expect(printing.print).not.toHaveBeenCalled();
    expect(printing.show).not.toHaveBeenCalled();
  });
});

describe('printing by a host that reaches none', () => {
  it('is left to the browser', async () => {
    const service = serviceWith();
    expect(await service.call('printing.ways', {})).toEqual({
      ok: true,
      value: { printers: [], viewer: false },
    });
    expect(await service.call('printing.print', { fileName: 'a.pdf', pdf })).toMatchObject({
      error: { code: 'noPrinting' },
    });
  });
});
