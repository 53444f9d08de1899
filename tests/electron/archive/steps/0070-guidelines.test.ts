import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { guidelines } from '../../../../electron/archive/steps/0070-guidelines.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';
import {
  dropGuidelines,
  listGuidelines,
  putGuidelines,
} from '../../../../electron/archive/tables/guidelines.ts';

it('the step to guideline values adds a table for them and leaves practices alone', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < guidelines.number),
  );
  db.exec(`INSERT INTO practice (id, json, changed_at) VALUES ('ours', '{}', '')`);
  const before = db.prepare('SELECT * FROM practice').all();
  expect(() => listGuidelines(db)).toThrow('no such table');
  takeSteps(db, [guidelines]);
  expect(db.prepare('SELECT * FROM practice').all()).toEqual(before);
  expect(db.pragma('user_version', { simple: true })).toBe(70);
  expect(listGuidelines(db)).toEqual([]);
  const kept = { id: 'decree', json: '{}', changedAt: '2025-03-09T07:05:00Z' };
  putGuidelines(db, { ...kept, id: 'other' });
  putGuidelines(db, { ...kept, json: '{"id":"older"}' });
  putGuidelines(db, kept);
  dropGuidelines(db, 'other');
  expect(listGuidelines(db)).toEqual([kept]);
});
