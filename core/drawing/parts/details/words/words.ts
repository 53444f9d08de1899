import type { Surrounding } from '../../../../record/site.ts';

/** The words of the pages of details, site plan and revisions, in one language. */
export interface DetailWords {
  /** In the title block. */
  readonly document: string;
  readonly foot: string;
  readonly head: string;
  readonly headPlan: string;
  /** On the outside of a screen, laid flat. */
  readonly slots: string;
  readonly sitePlan: string;
  readonly revisions: string;
  /** Of a sheet that shows what is in no revision yet. */
  readonly draft: string;
  readonly north: string;
  readonly scale: string;
  /** With `{length}` in metres. */
  readonly sumpLength: string;
  readonly drain: string;
  /** With `{slope}` in per cent. */
  readonly fall: string;
  readonly columns: Readonly<Record<'revision' | 'on' | 'by' | 'changes', string>>;
  readonly kinds: Readonly<Record<Surrounding['kind'], string>>;
  readonly slopes: Readonly<Record<NonNullable<Surrounding['slope']>, string>>;
  /** Of a sign at the edge of the plan. */
  readonly beyond: string;
  readonly notPlaced: string;
}
