import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { holdsDov, readDov } from '../../../../core/exchange/dov/readDov.ts';
import { bytesOf } from '../../../../core/exchange/encode.ts';

const data = path.join(import.meta.dirname, '../../../data/dov-flanders');

function read(bytes: Uint8Array) {
  const file = { name: 'dov.xml', bytes };
  expect(holdsDov(file)).toBe(true);
  const result = readDov(file);
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

const document = (inside: string) =>
  bytesOf([
    `<a:dov-schema xmlns:a="http://kern.schemas.dov.vlaanderen.be">${inside}</a:dov-schema>`,
  ]);

// Figures are those of the file.
test('a published monitoring well comes in with its pipes and levels', () => {
  const { wells, troubles } = read(readFileSync(path.join(data, 'grondwaterfilter_ZUVP003.xml')));
  expect(wells).toHaveLength(1);
  const { record } = wells[0]!;
  expect(record.identity?.number).toBe('ZUVP003');
  expect(record.site).toEqual({ elevation: 23.99, elevationDatum: 'TAW' });
  expect(record.bore?.depthReached).toBe(4);
  expect(record.strings).toEqual([
    {
      name: '1',
      components: [
        { kind: 'screen', inside: 50, length: 0.4 },
        { kind: 'plain', material: 'pvc', inside: 50, length: 4.43 },
      ],
      set: { by: 'bottom', depth: 4 },
    },
  ]);
  // Measuring point at 24.82 m, water at 22.61 m above TAW.
  expect(record.levels?.[0]).toEqual({
    at: '1997-11-16',
    reading: 2.21,
    datum: 'casingTop',
    remark: 'peillint',
  });
  expect(troubles).toMatchObject([{ column: 'pos', kept: true }]);
});

test('described layers come in under the name of their borehole', () => {
  const layer = (from: string, to: string, words: string) =>
    `<laag><van>${from}</van><tot>${to}</tot><beschrijving>${words}</beschrijving></laag>`;
  const { wells, troubles } = read(
    document(
      '<interpretaties><lithologischebeschrijving><boring>B345</boring>' +
        `${layer('1.00', '2.00', 'Veen')}${layer('0.00', '1.00', 'Bruine klei')}${layer('3', '3', 'x')}` +
        '</lithologischebeschrijving></interpretaties>',
    ),
  );
  expect(wells[0]!.record.identity?.number).toBe('B345');
  expect(wells[0]!.record.log).toEqual([
    { from: 0, to: 1, material: 'clay', words: 'Bruine klei' },
    { from: 1, to: 2, material: 'peat', words: 'Veen' },
  ]);
  expect(troubles).toMatchObject([{ column: 'laag', kept: false }]);
});

test('a water sample keeps its detection limits', () => {
  const { wells } = read(
    document(
      '<filtermeting><grondwaterlocatie>3-0040</grondwaterlocatie><watermonster>' +
        '<monstername><datum>2006-05-19</datum></monstername><observatie><parameter>Hg</parameter>' +
        '<waarde_numeriek>0.05</waarde_numeriek><eenheid>µg/l</eenheid>' +
        '<detectieconditie>&lt;</detectieconditie><veld_labo>LABO</veld_labo></observatie>' +
        '</watermonster></filtermeting>',
    ),
  );
  expect(wells[0]!.record.quality).toEqual([
    {
      takenAt: '2006-05-19',
      results: [{ parameter: 'Hg', value: 0.05, unit: 'µg/l', below: true, where: 'laboratory' }],
    },
  ]);
});
