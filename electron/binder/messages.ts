import type { BinderWish } from '../../core/contract/binderShape.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';

/** What all workers of a binder know. */
export interface WorkerSetup {
  readonly archiveFile: string;
  /** Where what is done lies until all is done. */
  readonly folder: string;
  readonly wish: BinderWish;
  /** ISO 8601 moment that all pages say they were made. */
  readonly madeAt: string;
  readonly programVersion: string;
}

/** A well of the binder, as the archive's list shows it. */
export interface WellToLay {
  readonly id: string;
  /** Name of its files in the folder: the same for the same revision, wish and program. */
  readonly key: string;
  readonly number: string;
  readonly name: string;
  readonly region: string;
  readonly district: string;
  readonly village: string;
  readonly revision: number;
  readonly changedAt: string;
}

/** What a worker is started for. */
export type Work =
  | { readonly kind: 'lay' }
  | {
      readonly kind: 'plan';
      readonly wells: readonly WellToLay[];
      readonly filterSays: string;
      readonly archiveHash: string;
      readonly template?: Template;
      /** Folder that issued papers are copied into, by its name alone. */
      readonly issuedFolder?: string;
    }
  | {
      readonly kind: 'copyIssued';
      readonly wells: readonly WellToLay[];
      readonly folder: string;
    }
  | { readonly kind: 'paint' };

export interface WorkerData {
  readonly setup: WorkerSetup;
  readonly work: Work;
}

/** To a worker that lays: the next well; `crashed` where a worker broke over it. */
export interface NextWell {
  readonly well: WellToLay;
  readonly crashed?: string;
}

/** From the worker that plans. */
export interface PlannedAnswer {
  /** Pages of each volume, from the first on. */
  readonly volumes: readonly number[];
  readonly failed: readonly { readonly number: string; readonly sentence: string }[];
}

/** To a worker that paints: the next volume, counted from 1, and where it goes. */
export interface NextVolume {
  readonly volume: number;
  readonly file: string;
}

/** From a worker that paints: pages of its volume so far; at the end the size of the file. */
export interface PaintedAnswer {
  readonly pages: number;
  readonly bytes?: number;
}
