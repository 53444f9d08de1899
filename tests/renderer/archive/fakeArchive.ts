import type { ArchiveState } from '../../../core/contract/calls.ts';
import type { HostEvent } from '../../../core/contract/events.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import type { ListRow, WellFilter } from '../../../core/contract/listShape.ts';
import { Place } from '../../../renderer/state/place.svelte.ts';

// The test's window lays nothing out, so that no size ever changes.
globalThis.ResizeObserver ??= class {
  observe() {}
  unobserve() {}
  disconnect() {}
};

export const rowOf = (id: string, parts: Partial<ListRow> = {}): ListRow => ({
  id,
  number: id,
  name: '',
  region: '',
  district: '',
  village: '',
  state: '',
  revision: 1,
  unrevised: false,
  changedAt: '2025-03-09T07:05:00',
  ...parts,
});

/** An archive that answers as its parts say, and remembers what it was asked. */
export interface FakeArchive {
  readonly place: Place;
  readonly tell: (event: HostEvent) => void;
  /** Arguments of the calls of one name. */
  readonly callsOf: (name: string) => unknown[];
}

export type Answers = Readonly<Record<string, unknown>>;

interface FindArguments {
  readonly filter: WellFilter;
  readonly from?: number;
  readonly limit?: number;
}

/** Calls of a name in `answers` give that value, or that error's sentence as a refusal. */
export async function fakeArchive(
  rows: readonly ListRow[],
  answers: Answers = {},
  state: Partial<ArchiveState> = {},
): Promise<FakeArchive> {
  const asked: [string, unknown][] = [];
  const listeners: ((event: HostEvent) => void)[] = [];
  const find = ({ filter, from = 0, limit = 100 }: FindArguments) => {
    const found = rows.filter(({ number, name }) =>
      `${number} ${name}`.includes(filter.search ?? ''),
    );
    return { rows: found.slice(from, from + limit), total: found.length, uncounted: 0 };
  };
  const good: Answers = {
    'archive.state': { name: 'North', wells: rows.length, readOnly: false, ...state },
    'list.map': { wells: [], withoutPosition: 0, leftOut: 0 },
    'list.choices': { regions: [], districts: [], states: [] },
    'list.rank': {},
    'backdrops.list': [],
    'bin.list': [],
  };
  const host = {
    async send(name: string, args: FindArguments) {
      asked.push([name, args]);
      const own = name in answers ? answers[name] : good[name];
      const value = own ?? (name === 'list.find' ? find(args) : undefined);
      return value instanceof Error
        ? { ok: false, error: { code: 'told', sentence: value.message } }
        : { ok: true, value };
    },
    onEvent(listener: (event: HostEvent) => void) {
      listeners.push(listener);
      return () => undefined;
    },
  };
  const place = new Place(host as unknown as PageHost);
  await place.readArchive();
  return {
    place,
    tell: (event) => listeners.forEach((listener) => listener(event)),
    callsOf: (name) => asked.filter(([one]) => one === name).map(([, args]) => args),
  };
}
