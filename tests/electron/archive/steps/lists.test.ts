import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

it('the step of lists keeps old wells, which are yet to be gone through, and watches changes', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < 40),
  );
  db.exec(`
    INSERT INTO well VALUES (1, 'a', 'KA-1', 'Mill', 'Kalo', 'Lémo', 'dry', 9.5, 3, 'then');
    INSERT INTO revision VALUES ('a', 3, '{}', 'then', 'hash')`);
  takeSteps(
    db,
    steps.filter(({ number }) => number <= 40),
  );
  const row = () => db.prepare('SELECT * FROM well').get() as Record<string, unknown>;
  expect(row()).toMatchObject({
    id: 'a',
    depth_m: 9.5,
    revision: 3,
    counted: 0,
    year: null,
    latitude: null,
    binned_at: null,
    number_key: '',
  });
  db.exec('UPDATE well SET counted = 5');
  expect(row()['counted']).toBe(5);
  db.exec("UPDATE well SET changed_at = 'now'");
  expect(row()['counted']).toBe(0);
  expect(() => db.exec('DELETE FROM revision')).toThrow('only with its well');
  db.exec("UPDATE well SET binned_at = 'now'; DELETE FROM revision; DELETE FROM well");
  expect(row()).toBeUndefined();
});
