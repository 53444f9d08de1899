import type { BinderContent, BinderKit, LaidPart, Places } from './binder.ts';
import { layColophon } from './colophon.ts';
import { layContents } from './contents.ts';
import { layCover } from './cover.ts';
import { layIndex } from './indexes.ts';
import { layIssued } from './issued/layIssued.ts';
import { layMap } from './map/layMap.ts';
import type { PartId } from './partIds.ts';
import { layPlots } from './plots/layPlots.ts';
import { layReading } from './reading.ts';
import { laySections } from './section/laySections.ts';
import { layTables } from './tables/layTables.ts';

type LayPart = (kit: BinderKit, content: BinderContent, places: Places) => LaidPart;

/** How each part is laid; its title is `kit.own.parts[id]`. */
export const layParts: Readonly<Record<PartId, LayPart>> = {
  cover: (kit, content) => layCover(kit, content),
  contents: layContents,
  reading: layReading,
  byVillage: layIndex('byVillage'),
  byNumber: layIndex('byNumber'),
  byYear: layIndex('byYear'),
  map: layMap,
  tables: layTables,
  plots: layPlots,
  sections: laySections,
  issued: layIssued,
  colophon: layColophon,
};
