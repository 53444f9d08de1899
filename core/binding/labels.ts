import type { Folio, PlannedVolume } from './plan.ts';

/** How the pages of a volume are called, from one of them on. */
export interface Label {
  /** Page of the volume, from 1. */
  readonly page: number;
  readonly style?: Folio['style'];
  /** Number of the first. */
  readonly from?: number;
  readonly prefix?: string;
}

/** The names of a volume's pages as viewers show them: what stands on the pages themselves. */
export function labelsOf({ pages }: PlannedVolume, cover: string): Label[] {
  const labels: Label[] = [];
  let expected: Folio | undefined;
  pages.forEach(({ folio }, at) => {
    const goesOn = expected?.style === folio?.style && expected?.number === folio?.number;
    if (!goesOn || at === 0)
      labels.push(
        folio
          ? { page: at + 1, style: folio.style, from: folio.number }
          : { page: at + 1, prefix: cover },
      );
    expected = folio && { ...folio, number: folio.number + 1 };
  });
  return labels;
}
