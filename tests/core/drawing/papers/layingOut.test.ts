import { describe, expect, it } from 'vitest';
import { well } from '../../../demo-data/wells.ts';
import { drawLaidOut } from '../../../sheets/layingOut.ts';
import { wellOfPipes } from '../../../sheets/awkwardTallies.ts';
import { emptyRecord } from '../../../sheets/examples/emptyRecord.ts';
import { extentOf } from '../../../sheets/extent.ts';
import { capitalsHigh } from '../../../sheets/measure.ts';
import { placedOn, textsOn } from '../../../sheets/placed.ts';
import { languages } from '../../../../core/base/language.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';

const textsOf = (record: WellRecord) => drawLaidOut(record).drawing.pages.flatMap(textsOn);

/** Texts of the rows of one table that lead to a path, by the row. */
function row(record: WellRecord, table: string, path: string): string[] {
  const texts = textsOf(record).filter(
    ({ groups, source }) => groups.includes(table) && source === path,
  );
  return texts.map(({ item }) => item.text);
}

describe('the laying-out sheet', () => {
  const record = well('laid-out-45m.json');

  it('says what it is, of which well and by whom, to readers of the file', () => {
    expect(drawLaidOut(record).drawing).toMatchObject({
      title: 'KV-26-015 – Maŋelossi, quartier haut',
      subject: 'Laying-out sheet',
      author: 'Yamélia Ɓossarin',
      language: 'en',
    });
  });

  it('names the practice with its version, and what the well was laid out from', () => {
    const said = textsOf(record).map(({ item }) => item.text);
    expect(said).toContain('General: small-diameter hand-drilled wells, 1.0');
    expect(said).toContain('the record');
  });

  it('marks the pipe that is to be cut', () => {
    const cut = 'strings[0].components[4]';
    expect(row(record, 'pipes', cut)).toEqual(['18', 'plain, cut to', '1.12', '45.40', '+0.40']);
  });

  it('gives each fill its levels, litres and sacks', () => {
    const gravel = row(record, 'fills', 'annulus[3]');
    expect(gravel).toEqual([
      'B',
      'gravel pack 1–2 mm',
      '45.60',
      '32.20',
      '32.60',
      '264',
      '11',
      '× 50 kg',
    ]);
  });

  it('sets what the crew works to at 3.5 mm', () => {
    const figures = textsOf(record).filter(
      ({ item, groups }) => /^\+?\d+\.\d\d$/.test(item.text) && !groups.includes('callouts'),
    );
    expect(figures.length).toBeGreaterThan(60);
    expect(figures.filter(({ item }) => capitalsHigh(item.em) < 3.5 - 1e-6)).toEqual([]);
  });

  it('has a box to tick for each pipe, each mark and each fill', () => {
    const [page] = drawLaidOut(record).drawing.pages;
    const boxes = placedOn(page!).filter(({ item, groups }) => {
      if (item.kind !== 'path' || !groups.includes('row')) return false;
      const [left, top, right, foot] = extentOf(item);
      return item.segments.length === 5 && Math.abs(right - left - (foot - top)) < 1e-6;
    });
    expect(boxes).toHaveLength(18 + 4 + 5);
  });

  it.each(languages)('stands on one page for 11 to 25 pipes with five fills, in %s', (language) => {
    for (let plain = 5; plain <= 19; plain += 1)
      expect(drawLaidOut(wellOfPipes(plain), language).drawing.pages).toHaveLength(1);
  });

  it('goes on on a second page where the tally is longer, and says so on both', () => {
    const { drawing } = drawLaidOut(well('telescoped-in-granite.json'));
    const said = drawing.pages.map((page) => textsOn(page).map(({ item }) => item.text));
    expect(said).toHaveLength(2);
    expect(said[0]).toContain('goes on on sheet 2');
    expect(said[1]).toContain('Pipes, in the order they go in, goes on from sheet 1');
  });

  it('is a page for a record in which nothing is written', () => {
    const said = textsOf(emptyRecord()).map(({ item }) => item.text);
    expect(said).toContain('No string is laid out yet.');
    expect(said).toContain('No fill is laid out yet.');
  });

  it('warns where the record contradicts itself', () => {
    const odd = { ...record, log: [{ from: 5, to: 2, material: 'clay' as const }] };
    const said = textsOf(odd).map(({ item }) => item.text);
    expect(said.join(' ')).toMatch(/The record contradicts itself/);
  });
});

describe('a well that is built and keeps what was proposed', () => {
  const built = well('hand-drilled-32m.json');
  const proposed = well('shallow-direct-action-9m.json');
  const proposal = {
    takenOn: '2026-05-13',
    practice: 'handDrilled 1.0',
    strings: proposed.strings!,
    annulus: proposed.annulus!,
  };
  const kept = { ...built, layingOut: { proposal } };

  it('is drawn as proposed, each part leading to the proposal', () => {
    const sources = new Set(textsOf(kept).map(({ source }) => source));
    expect(sources).toContain('layingOut.proposal.strings[0].components[0]');
    expect(sources).toContain('layingOut.proposal.annulus[0]');
    expect([...sources].filter((one) => one?.startsWith('strings'))).toEqual([]);
    const said = textsOf(kept).map(({ item }) => item.text);
    expect(said).toContain('proposal of 2026-05-13');
    // The whole string of the proposal, not the 32.45 m that were built.
    expect(said).toContain('9.40');
    expect(said).not.toContain('32.45');
  });

  it('is drawn as the record has it while nothing is in the ground', () => {
    const before = { ...kept, identity: { ...built.identity, state: 'laidOut' as const } };
    expect(textsOf(before).map(({ item }) => item.text)).toContain('32.45');
  });
});
