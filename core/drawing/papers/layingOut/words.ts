import type { ComponentKind } from '../../../record/strings.ts';

/** Words of the laying-out sheet alone, in one language; `{…}` are filled in. */
export interface LayingOutWords {
  readonly title: string;
  readonly head: Readonly<
    Record<
      'date' | 'place' | 'driller' | 'practice' | 'basis' | 'fromRecord' | 'asProposed',
      string
    >
  >;
  readonly sketch: string;
  /** Beside the sketch, as short as can be. */
  readonly beside: Readonly<Record<'casingTop' | 'screen' | 'foot' | 'hole', string>>;
  /** In the column of pipes. */
  readonly kinds: Readonly<Record<ComponentKind, string>>;
  readonly cutTo: string;
  readonly pipes: Readonly<
    Record<
      'title' | 'number' | 'pipe' | 'length' | 'running' | 'joint' | 'measured' | 'none',
      string
    >
  >;
  readonly string: string;
  readonly marks: Readonly<
    Record<
      'title' | 'pipes' | 'each' | 'screenTop' | 'ground' | 'groundAlone' | 'centralisers',
      string
    >
  >;
  readonly totals: Readonly<
    Record<'hole' | 'string' | 'foot' | 'above' | 'under' | 'measured', string>
  >;
  readonly fills: Readonly<
    Record<
      | 'title'
      | 'fill'
      | 'foot'
      | 'top'
      | 'fromCasing'
      | 'litres'
      | 'sacks'
      | 'poured'
      | 'sounded'
      | 'none'
      | 'nothing',
      string
    >
  >;
  readonly cautions: { readonly title: string; readonly each: readonly string[] };
  /** `{count}` findings of the record that contradict it. */
  readonly contradictions: Readonly<Record<'one' | 'many', string>>;
  readonly driller: string;
}
