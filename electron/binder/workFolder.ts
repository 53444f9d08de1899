import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { deserialize, serialize } from 'node:v8';
import type { Mark } from '../../core/binding/bookmarks.ts';
import type { Label } from '../../core/binding/labels.ts';
import type { Plan } from '../../core/binding/plan.ts';
import type { BinderWell } from '../../core/drawing/binder/binderWell.ts';
import type { BoundSheet } from '../../core/drawing/binder/boundPapers.ts';
import type { HatchTile, Page } from '../../core/drawing/items.ts';

/** What is known of a well that was laid, without its pages. */
export interface LaidWell {
  readonly well: BinderWell;
  readonly papers: readonly { readonly kind: BoundSheet; readonly pages: number }[];
  /** Why its papers could not be made. */
  readonly failed?: string;
}

/** A paper, as it is painted. */
export interface LaidPaper {
  readonly pages: readonly Page[];
  readonly hatches: Readonly<Record<string, HatchTile>>;
}

/** What is known of a binder before it is painted. */
export interface PlannedBinder {
  readonly plan: Plan;
  readonly districts: readonly string[];
  /** By the id of each well: the key of its files, and what stands in its margins. */
  readonly wells: ReadonlyMap<string, { readonly key: string; readonly well: MarginWell }>;
}

export type MarginWell = Pick<BinderWell, 'number' | 'name' | 'revision' | 'district'>;

/** What of a volume is its own: pages that are no well's paper, by their place from 0. */
export interface VolumeParts {
  readonly pages: ReadonlyMap<number, Page>;
  readonly hatches: LaidPaper['hatches'];
  readonly bookmarks: readonly Mark[];
  readonly labels: readonly Label[];
}

/** Written beside its place and renamed, so that a stopped run leaves no half of a file. */
function put(file: string, value: unknown): void {
  const part = `${file}.part`;
  writeFileSync(part, serialize(value));
  renameSync(part, file);
}

const get = (file: string): unknown => deserialize(readFileSync(file));

export type WorkFolder = ReturnType<typeof workFolder>;

/** The files of a binder in the making. */
export function workFolder(folder: string) {
  const at = (name: string) => path.join(folder, name);
  mkdirSync(folder, { recursive: true });
  return {
    isLaid: (key: string) => existsSync(at(`${key}.well`)),
    /** The pages first: a well whose facts are there is whole. */
    putLaid(key: string, laid: LaidWell, papers: readonly LaidPaper[]): void {
      put(at(`${key}.pages`), papers);
      put(at(`${key}.well`), laid);
    },
    laid: (key: string) => get(at(`${key}.well`)) as LaidWell,
    papers: (key: string) => get(at(`${key}.pages`)) as readonly LaidPaper[],
    putPlan: (planned: PlannedBinder) => put(at('plan'), planned),
    plan: () => get(at('plan')) as PlannedBinder,
    putParts: (volume: number, parts: VolumeParts) => put(at(`volume-${volume}`), parts),
    parts: (volume: number) => get(at(`volume-${volume}`)) as VolumeParts,
    /** The moment of a run over the same wish that was stopped; else all begins anew. */
    begin(wish: string, madeAt: string): string {
      const file = at('run');
      const known = existsSync(file) ? (get(file) as { wish: string; madeAt: string }) : undefined;
      if (known?.wish === wish) return known.madeAt;
      rmSync(folder, { recursive: true, force: true });
      mkdirSync(folder, { recursive: true });
      put(file, { wish, madeAt });
      return madeAt;
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
