import type { BinderContent } from './binder.ts';
import { backMatter, partIds, type PartId } from './partIds.ts';

/** Parts that stand only in some binders. */
const asked: Readonly<Partial<Record<PartId, (content: BinderContent) => boolean>>> = {
  sections: ({ sections }) => sections.length > 0,
  issued: ({ issued }) => issued.papers.length > 0,
  byYear: ({ wells }) => wells.some(({ year }) => year !== undefined),
};

/** The parts that a binder has, in their order. */
export function presentParts(content: BinderContent): PartId[] {
  return partIds.filter((id) => asked[id]?.(content) ?? true);
}

export function frontParts(content: BinderContent): PartId[] {
  return presentParts(content).filter((id) => !backMatter.includes(id));
}

export function backParts(content: BinderContent): PartId[] {
  return presentParts(content).filter((id) => backMatter.includes(id));
}
