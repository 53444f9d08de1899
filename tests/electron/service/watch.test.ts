import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { HostEvent } from '../../../core/contract/events.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { openService } from '../../../electron/service/openService.ts';
import { watchArchive } from '../../../electron/service/watch.ts';
import { countingWorld, openFresh, record, retype, revise, valueOf } from '../archive/sample.ts';

let mine: Archive;
let theirs: Archive;
let heard: HostEvent[];
let look: () => void;

beforeEach(() => {
  mine = openFresh();
  theirs = valueOf(openArchive(mine.file, countingWorld()));
  valueOf(mine.create('a', record));
  valueOf(mine.create('b', record));
  heard = [];
  look = watchArchive(mine, (event) => heard.push(event));
});
afterEach(() => {
  mine.close();
  theirs.close();
});

const told = () => heard.splice(0).map(({ data }) => data);

describe('a look for what another program did', () => {
  it('tells of the well that was edited, and of that one alone', () => {
    valueOf(retype(theirs, 'a', { ...record, notes: 'theirs' }));
    look();
    expect(told()).toMatchObject([{ id: 'a', edit: 1, revision: 1, unrevised: true }]);
    look();
    expect(told()).toEqual([]);
  });

  it('tells of a revision and of a new well', () => {
    valueOf(revise(theirs, 'b', { ...record, notes: 'theirs' }));
    valueOf(theirs.create('c', record));
    look();
    expect(told()).toMatchObject([
      { id: 'b', revision: 2, unrevised: false },
      { id: 'c', revision: 1, edit: 0 },
    ]);
  });

  it('tells nothing while only this program writes', () => {
    valueOf(retype(mine, 'a', { ...record, notes: 'mine' }));
    look();
    expect(told()).toEqual([]);
  });
});

it('the service looks about once a second, until it is closed', async () => {
  const runs: { milliseconds: number; run: () => void }[] = [];
  let stopped = 0;
  const every = (milliseconds: number, run: () => void) => {
    runs.push({ milliseconds, run });
    return () => void (stopped += 1);
  };
  const world = { clock: () => '2025-03-01T08:00:00Z', newId: () => 'id', every };
  const open = valueOf(openService(mine.file, world));
  open.service.onEvent((event) => heard.push(event));
  valueOf(retype(theirs, 'a', { ...record, notes: 'theirs' }));
  expect(runs).toMatchObject([{ milliseconds: 1000 }]);
  runs[0]!.run();
  expect(told()).toMatchObject([{ id: 'a', edit: 1 }]);
  await open.close();
  expect(stopped).toBe(1);
});
