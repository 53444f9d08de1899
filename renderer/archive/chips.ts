import { worstFindings } from '../../core/record/wellFilter.ts';
import type { WellFilter } from '../../core/contract/listShape.ts';
import { say } from '../parts/words.ts';
import { shownAmount, shownMethod, shownPump, shownState } from './shown.ts';

/** One part of the filter, and the filter's parts without it. */
export interface Chip {
  readonly text: string;
  readonly without: { readonly [K in keyof WellFilter]?: WellFilter[K] | undefined };
}

/** Parts of a filter of which any of several values may be chosen. */
export type ChosenFrom =
  'regions' | 'districts' | 'states' | 'findings' | 'methods' | 'pumps' | 'clients' | 'contractors';

function each<K extends ChosenFrom>(
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

type Bound = 'yearFrom' | 'yearTo' | 'depthFrom' | 'depthTo' | 'yieldFrom' | 'yieldTo';

/** A lower or upper end; years are written without marks between their digits. */
function bound(filter: WellFilter, key: Bound, name: string): Chip[] {
  const value = filter[key];
  if (value === undefined) return [];
  const { from, to } = say.archive.filters;
  const text = key.startsWith('year') ? String(value) : shownAmount(value);
  return [
    {
      text: `${name} ${key.endsWith('From') ? from(text) : to(text)}`,
      without: { [key]: undefined },
    },
  ];
}

/** All parts of a filter, each to be taken away by itself. */
export function chipsOf(filter: WellFilter): Chip[] {
  const { filters, columns } = say.archive;
  const { search = '' } = filter;
  return [
    ...(search.trim() === ''
      ? []
      : [{ text: filters.searched(search.trim()), without: { search: undefined } }]),
    ...each(filter, 'regions', filters.region, shownText),
    ...each(filter, 'districts', filters.district, shownText),
    ...each(filter, 'states', filters.state, shownState),
    ...each(filter, 'findings', filters.findings, (one) => filters.worst[one]),
    ...each(filter, 'methods', filters.method, shownMethod),
    ...each(filter, 'pumps', filters.pump, shownPump),
    ...each(filter, 'clients', filters.client, shownText),
    ...each(filter, 'contractors', filters.contractor, shownText),
    ...(['yearFrom', 'yearTo'] as const).flatMap((key) => bound(filter, key, columns.year)),
    ...(['depthFrom', 'depthTo'] as const).flatMap((key) => bound(filter, key, columns.depth)),
    ...(['yieldFrom', 'yieldTo'] as const).flatMap((key) => bound(filter, key, filters.yield)),
  ];
}

export const worstOptions = () =>
  worstFindings.map((value) => ({ value, text: say.archive.filters.worst[value] }));
