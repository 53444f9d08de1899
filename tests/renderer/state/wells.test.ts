import { beforeEach, describe, expect, it } from 'vitest';
import { ok, type Result } from '../../../core/base/result.ts';
import type { Answer, CallName } from '../../../core/contract/calls.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import { Wells } from '../../../renderer/state/wells.svelte.ts';

const answers: Partial<Record<CallName, unknown>> = {
  'list.find': { rows: [], total: 0, uncounted: 0 },
  'list.map': { wells: [], placed: 0 },
  'list.choices': { states: [] },
  'backdrops.list': [],
  'bin.list': [],
};

let asked: CallName[] = [];
const host: PageHost = {
  send: <N extends CallName>(name: N): Promise<Answer<N>> => {
    asked.push(name);
    return Promise.resolve(ok(answers[name]) as Result<unknown> as Answer<N>);
  },
  onEvent: () => () => undefined,
};
let wells: Wells;
beforeEach(async () => {
  wells = new Wells(host);
  await wells.read();
  asked = [];
});

describe('the list of an archive', () => {
  it('asks for everything when it is read', async () => {
    await wells.read();
    expect(asked.toSorted()).toEqual(Object.keys(answers).toSorted());
  });

  it('asks for rows and map alone when something else is searched', async () => {
    await wells.want({ search: 'kelum' });
    expect(asked).toEqual(['list.find', 'list.map']);
  });

  it('asks for rows alone when the order is another', async () => {
    await wells.sort('village');
    expect(asked).toEqual(['list.find']);
  });

  it('does not ask for the map of a search that another one overtook', async () => {
    await Promise.all([wells.want({ search: 'k' }), wells.want({ search: 'ke' })]);
    expect(asked.filter((name) => name === 'list.map')).toHaveLength(1);
  });

  it('has the map of a search although the order changed meanwhile', async () => {
    await Promise.all([wells.want({ search: 'k' }), wells.sort('village')]);
    expect(asked.filter((name) => name === 'list.map')).toHaveLength(1);
    expect(wells.map).toEqual(answers['list.map']);
  });
});
