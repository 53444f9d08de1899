import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { orientations } from '../../core/drawing/paper.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { drawSheet, paperNames } from './drawn.ts';
import { textsOn } from './placed.ts';
import { demoWells } from './wells.ts';

/** Values of title blocks that end in an ellipsis. */
function cutIn(
  record: WellRecord,
  paper: (typeof paperNames)[number],
  orientation: (typeof orientations)[number],
) {
  return languages.flatMap((language) =>
    drawSheet(record, paper, language, {}, { orientation }).drawing.pages.flatMap((page) =>
      textsOn(page)
        .filter(({ item, groups }) => groups.includes('titleBlock') && item.text.endsWith('…'))
        .map(({ item }) => `${language}: ${item.text}`),
    ),
  );
}

/** As long as what people write; each of 80 letters. */
const long = {
  client: 'Association of the water users of the upper and lower quarters of Balenkori-Tova',
  programme: 'Rehabilitation and building of village water points along the Kelumvara plateau 2',
  contractor: 'Brothers Cavelunga and Company, drilling of boreholes and building of pumps, 1st',
  name: 'Well of the united upper and lower settlements behind the school of Maŋelossi No',
  spot: 'between the two kapok trees, sixty metres from the path to the old mill, upslope',
};

const stretched = ({ identity, site, ...rest }: WellRecord): WellRecord => {
  const { client, programme, contractor, name, spot } = long;
  return {
    ...rest,
    identity: { ...identity, client, programme, contractor, name },
    site: { ...site, village: '', spot },
  };
};

describe.each(paperNames)('the title block on %s', (paper) => {
  it.each(demoWells)('cuts no value of %s', (_, record) => {
    for (const orientation of orientations) expect(cutIn(record, paper, orientation)).toEqual([]);
  });

  it('cuts no name and no place of 80 letters, in no language', () => {
    for (const text of Object.values(long)) expect(text.length).toBeGreaterThanOrEqual(80);
    const [, record] = demoWells[0]!;
    for (const orientation of orientations)
      expect(cutIn(stretched(record), paper, orientation)).toEqual([]);
  });
});
