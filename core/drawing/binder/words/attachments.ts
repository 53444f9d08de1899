import type { HeldState } from '../attachments/attachments.ts';

/** Words of the pages with a well's attachments. */
export interface AttachmentWords {
  readonly title: string;
  readonly heads: Readonly<
    Record<'file' | 'shows' | 'kind' | 'size' | 'day' | 'why' | 'hash', string>
  >;
  /** Why a file is listed and not shown. */
  readonly document: string;
  readonly leftOut: string;
  readonly states: Readonly<Record<Exclude<HeldState, 'held'>, string>>;
  readonly filesSay: string;
}
