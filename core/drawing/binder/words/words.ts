import type { Language } from '../../../base/language.ts';
import type { PartId } from '../partIds.ts';
import type { TableWords } from './tables.ts';
import type { ColophonWords } from './colophon.ts';
import type { AttachmentWords } from './attachments.ts';
import type { IssuedWords } from './issued.ts';
import type { MapWords } from './map.ts';
import type { PlotWords } from './plots.ts';
import type { SectionWords } from './section.ts';
import type { PaperSays, ReadingWords } from './reading.ts';

/**
 * Words of the binder's own pages in one language; `{…}` are filled in. None of them says that
 * water may be drunk.
 */
export interface BinderWords {
  readonly language: Language;
  readonly parts: Readonly<Record<PartId, string>>;
  readonly papers: PaperSays;
  /** One and more of a thing, with `{n}`. */
  readonly counts: Readonly<
    Record<'wells' | 'districts' | 'villages' | 'programmes' | 'papers', Count>
  >;
  readonly noDistrict: string;
  readonly noVillage: string;
  readonly noNumber: string;
  readonly noState: string;
  readonly noYear: string;
  readonly page: string;
  readonly cover: Readonly<
    Record<
      | 'volume'
      | 'volumePages'
      | 'district'
      | 'programme'
      | 'wells'
      | 'states'
      | 'period'
      | 'noPeriod'
      | 'papers'
      | 'madeOn'
      | 'madeBy'
      | 'caution',
      string
    >
  >;
  readonly contents: Readonly<Record<'front' | 'wells' | 'back', string>>;
  readonly reading: ReadingWords;
  readonly tables: TableWords;
  readonly colophon: ColophonWords;
  readonly map: MapWords;
  readonly plots: PlotWords;
  readonly section: SectionWords;
  readonly issued: IssuedWords;
  readonly attachments: AttachmentWords;
  readonly failed: Readonly<Record<'title' | 'todo', string>>;
}

export interface Count {
  readonly one: string;
  readonly more: string;
}
