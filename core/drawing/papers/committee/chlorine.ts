import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { Block } from '../../parts/block.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { dayInWords } from './days.ts';
import { layParagraphs } from './paragraphs.ts';

/** When the well was last treated, and what to beware of when it is again. */
export function layChlorine(kit: CommitteeKit, record: WellRecord, width: PaperMm): Block {
  const { chlorine } = kit.own;
  const days = (record.disinfection ?? []).map(({ at }, row) => ({ at, row }));
  const last = days
    .filter(({ at }) => at !== undefined)
    .sort((a, b) => (a.at! < b.at! ? -1 : 1))
    .at(-1);
  const treated =
    last?.at === undefined
      ? []
      : [
          {
            says: filled(chlorine.last, { day: dayInWords(kit, last.at) }),
            source: `disinfection[${last.row}].at`,
          },
        ];
  return layParagraphs(
    kit,
    chlorine.title,
    [{ says: chlorine.each.join(' ') }, ...treated],
    width,
    'chlorine',
  );
}
