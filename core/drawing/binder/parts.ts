import type { BinderContent, BinderKit, LaidPart, Places } from './binder.ts';
import { layContents } from './contents.ts';
import { layCover } from './cover.ts';
import type { PartId } from './partIds.ts';

type LayPart = (kit: BinderKit, content: BinderContent, places: Places) => LaidPart;

/** How each part is laid; its title is `kit.own.parts[id]`. */
export const layers: Readonly<Partial<Record<PartId, LayPart>>> = {
  cover: (kit, content) => layCover(kit, content),
  contents: layContents,
};
