import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { Item } from '../../items.ts';
import { widthOf } from '../../letters.ts';
import type { Block } from '../../parts/block.ts';
import { group } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { layParagraphs } from './paragraphs.ts';
import { blank, blockTitle, rise, said } from './text.ts';

interface Person {
  readonly as: string;
  readonly name?: string | undefined;
  readonly source: RecordPath;
  readonly bold?: boolean;
  /** A line behind the name for the telephone, which the record does not hold. */
  readonly numberByHand?: boolean;
}

const rowHeight: PaperMm = 5;
/** So little that is left of a line holds no telephone number. */
const leastLine: PaperMm = 14;

function peopleOf({ own }: CommitteeKit, { site, identity }: WellRecord): Person[] {
  const { call } = own;
  const { chair, name, caretaker, telephone } = site?.committee ?? {};
  return [
    { as: call.chair, name: chair ?? name, source: 'site.committee.chair' },
    { as: call.caretaker, name: caretaker, source: 'site.committee.caretaker' },
    { as: call.telephone, name: telephone, source: 'site.committee.telephone', bold: true },
    { as: call.mechanic, source: 'site.committee.caretaker', numberByHand: true },
    {
      as: call.contractor,
      name: identity?.contractor,
      source: 'identity.contractor',
      numberByHand: true,
    },
    {
      as: call.supervisor,
      name: identity?.supervisor,
      source: 'identity.supervisor',
      numberByHand: true,
    },
  ];
}

function drawPerson(
  kit: CommitteeKit,
  { as, name, source, bold, numberByHand }: Person,
  labelWidth: PaperMm,
  x: PaperMm,
  y: PaperMm,
  width: PaperMm,
): Item[] {
  const left = x + labelWidth;
  const room = width - labelWidth;
  const label = said(kit, as, x, y + rise, {});
  if (name === undefined || name.trim() === '') return [...label, blank(left, y + rise, room)];
  const face = bold ? 'bold' : 'regular';
  const look = { face, lettering: 'plain' } as const;
  const shown = Math.min(room, widthOf(kit, name, look)) + 1.5;
  const lined = numberByHand === true && room - shown >= leastLine;
  return [
    ...label,
    ...said(kit, name, left, y + rise, { ...look, widest: room, source }),
    ...(lined ? [blank(left + shown, y + rise, room - shown)] : []),
  ];
}

/** Who answers for the well, with room for the numbers that the record does not hold. */
export function layCallWhom(kit: CommitteeKit, record: WellRecord, width: PaperMm): Block {
  const { call } = kit.own;
  const people = peopleOf(kit, record);
  const labels = people.map(({ as }) => widthOf(kit, as, { lettering: 'plain' }));
  const labelWidth = Math.max(...labels) + 3;
  return {
    height: kit.spacing.title + people.length * rowHeight,
    draw: (x, y) => [
      ...blockTitle(kit, call.title, x, y, width, 'phone'),
      group(
        'call',
        people.flatMap((one, at) =>
          drawPerson(kit, one, labelWidth, x, y + kit.spacing.title + at * rowHeight, width),
        ),
      ),
    ],
  };
}

/** What to stop drawing water for, and call. */
export function layStopSigns(kit: CommitteeKit, width: PaperMm): Block {
  const { when, signs } = kit.own.call;
  return layParagraphs(kit, when, [{ says: signs }], width, 'warning');
}
