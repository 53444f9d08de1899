import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { templates } from '../../../../electron/archive/steps/0190-templates.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';
import {
  chooseTemplate,
  dropTemplate,
  listTemplates,
  putTemplate,
  usualTemplate,
} from '../../../../electron/archive/tables/templates.ts';

it('the step to templates adds a table for them, of which at most one is the usual one', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < templates.number),
  );
  db.exec(`INSERT INTO guidelines (id, json, changed_at) VALUES ('decree', '{}', '')`);
  const before = db.prepare('SELECT * FROM guidelines').all();
  expect(() => listTemplates(db)).toThrow('no such table');
  takeSteps(db, [templates]);
  expect(db.prepare('SELECT * FROM guidelines').all()).toEqual(before);
  expect(db.pragma('user_version', { simple: true })).toBe(190);
  expect([listTemplates(db), usualTemplate(db)]).toEqual([[], undefined]);
  const kept = { name: 'office', json: '{}', changedAt: '2025-03-09T07:05:00Z' };
  putTemplate(db, { ...kept, name: 'other' });
  putTemplate(db, { ...kept, json: '{"name":[]}' });
  chooseTemplate(db, 'other');
  chooseTemplate(db, 'office');
  putTemplate(db, kept);
  expect(usualTemplate(db)).toEqual({ ...kept, usual: true });
  expect(() => db.exec('UPDATE template SET usual = 1')).toThrow('UNIQUE');
  dropTemplate(db, 'other');
  expect(listTemplates(db)).toEqual([{ ...kept, usual: true }]);
});
