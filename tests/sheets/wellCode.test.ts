import { describe, expect, it } from 'vitest';
import { readFonts } from '../../electron/files/fonts.ts';
import { recordHash } from '../../electron/seal/recordHash.ts';
import { makeAsBuilt } from '../../electron/service/sheet.ts';
import { codesOn } from '../reading/tools.ts';
import { demoWells } from './wells.ts';

const fonts = readFonts();
const made = { fonts, madeAt: '2026-01-31T12:00:00Z', revision: 12 } as const;

// The independent reader: zbar, over the first page as poppler paints it at an office scanner's
// 200 dots an inch.
describe('the code on the first page', () => {
  it.each(demoWells)('of %s leads to its place and names well, revision and hash', (_, record) => {
    const { identity, site } = record;
    const sheet = makeAsBuilt(record, { ...made, paper: 'A4' });
    const [told, ...others] = codesOn(sheet.pdf(), 200);
    expect(others).toEqual([]);
    if (site?.latitude !== undefined && site.longitude !== undefined) {
      const [, latitude, longitude] = /^geo:([-\d.]+),([-\d.]+);/.exec(told!)!;
      expect(Number(latitude)).toBeCloseTo(site.latitude, 6);
      expect(Number(longitude)).toBeCloseTo(site.longitude, 6);
    }
    expect(told).toContain(`well=${identity!.number}`);
    expect(told).toMatch(new RegExp(`;rev=12;sha256=${recordHash(record)}$`));
  });

  it('is read from an A3 sheet, and where all that it tells is long', () => {
    const [, record] = demoWells[0]!;
    const long = {
      ...record,
      identity: { ...record.identity, number: 'LOT-12/REGION-07/000123-Éé-further' },
      site: { latitude: -61.123456, longitude: -171.123456, positionAccuracy: 12.5 },
    };
    const told = codesOn(makeAsBuilt(long, { ...made, paper: 'A3' }).pdf(), 200);
    expect(told[0]).toContain('geo:-61.123456,-171.123456;u=12.5;well=LOT-12%2FREGION-07%2F0001');
    expect(told[0]).toContain(recordHash(long));
  });

  it('stands on no further page', () => {
    const { pages } = makeAsBuilt(demoWells[0]![1], { ...made, paper: 'A4' }).drawing;
    const codes = pages.map(({ items }) => JSON.stringify(items).includes('"wellCode"'));
    expect(codes).toEqual(pages.map((_, at) => at === 0));
  });
});
