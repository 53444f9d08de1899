import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { longLists } from '../../../../electron/archive/steps/0160-long-lists.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

it('the step to long lists keeps old wells, whose lines are to be written anew', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < longLists.number),
  );
  db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at,
      listed_by)
    VALUES (1, 'a', 'KA-1', 'Mill', 'Kalo', '', 'dry', 1, 'then', 7)`);
  takeSteps(db, [longLists]);
  expect(db.prepare('SELECT * FROM well').get()).toMatchObject({
    ...{ id: 'a', name: 'Mill', changed_at: 'then', listed_by: 0 },
    ...{ state_rank: null, yield_m3h: null, method: '', pump: '', client: '', contractor: '' },
  });
});
