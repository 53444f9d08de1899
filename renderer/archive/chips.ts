import { worstFindings } from '../../core/record/wellFilter.ts';
import type { WellFilter } from '../../core/contract/listShape.ts';
import { say } from '../parts/words.ts';
import { shownState } from './shown.ts';

/** One part of the filter, and the filter's parts without it. */
export interface Chip {
  readonly text: string;
  readonly without: { readonly [K in keyof WellFilter]?: WellFilter[K] | undefined };
}

type Lists = 'regions' | 'districts' | 'states' | 'findings';

function each<K extends Lists>(
  filter: WellFilter,
  key: K,
  name: string,
  shown: (value: NonNullable<WellFilter[K]>[number]) => string,
): Chip[] {
  const values = (filter[key] ?? []) as readonly NonNullable<WellFilter[K]>[number][];
  return values.map((value) => ({
    text: say.archive.filters.is(name, shown(value)),
    without: { [key]: values.filter((one) => one !== value) },
  }));
}

/** A text of a filter; wells where nothing was written have the empty one. */
export const shownText = (text: string) => text || say.archive.notWritten;

/** All parts of a filter, each to be taken away by itself. */
export function chipsOf(filter: WellFilter): Chip[] {
  const { filters, columns } = say.archive;
  const { search = '', yearFrom, yearTo } = filter;
  return [
    ...(search.trim() === ''
      ? []
      : [{ text: filters.searched(search.trim()), without: { search: undefined } }]),
    ...each(filter, 'regions', filters.region, shownText),
    ...each(filter, 'districts', filters.district, shownText),
    ...each(filter, 'states', filters.state, shownState),
    ...each(filter, 'findings', filters.findings, (one) => filters.worst[one]),
    ...(yearFrom === undefined
      ? []
      : [{ text: `${columns.year} ${filters.from(yearFrom)}`, without: { yearFrom: undefined } }]),
    ...(yearTo === undefined
      ? []
      : [{ text: `${columns.year} ${filters.to(yearTo)}`, without: { yearTo: undefined } }]),
  ];
}

export const worstOptions = () =>
  worstFindings.map((value) => ({ value, text: say.archive.filters.worst[value] }));
