import { describe, expect, it } from 'vitest';
import { callNames, checkCall } from '../../../core/contract/index.ts';
import type { CallName } from '../../../core/contract/calls.ts';

const record = { schemaVersion: 1 };

/** Arguments that each call takes: the fewest, and the widest that still go. */
const right: Readonly<Record<CallName, readonly object[]>> = {
  'archive.state': [{}],
  'archive.check': [{}],
  'wells.list': [{}, { search: '' }, { search: 'é'.repeat(200) }],
  'wells.open': [{ id: 'a' }, { id: 'a'.repeat(64) }],
  'wells.openRevision': [{ id: 'a', revision: 1 }],
  'wells.save': [
    { id: 'a', revision: 1, record },
    { id: 'a', revision: 9e6, record: {} },
  ],
  'wells.create': [{ record }, { record: {} }],
  'wells.revisions': [{ id: 'a' }],
  'attachments.put': [{ data: '' }, { data: '/9j/', copy: '/9j/' }],
  'attachments.get': [{ hash: 'a1'.repeat(32) }],
  'attachments.printCopy': [{ hash: 'a1'.repeat(32) }],
  'papers.asBuilt': [
    { id: 'a', paper: 'A4' },
    { id: 'a', paper: 'A3' },
    { id: 'a', paper: 'A4', language: 'pt' },
  ],
  'settings.read': [{}],
  'settings.write': [{}, { language: 'fr', contrast: 'high', tablesPercent: 40 }],
};

/** Arguments that each call refuses, and the argument that its sentence must name. */
const wrong: readonly (readonly [name: CallName, args: unknown, place: string])[] = [
  ['archive.state', { id: 'a' }, 'id'],
  ['archive.check', { deep: true }, 'deep'],
  ['wells.list', { search: 7 }, 'search: '],
  ['wells.list', { search: 'a'.repeat(201) }, 'search: '],
  ['wells.list', { search: null }, 'search: '],
  ['wells.list', { find: 'a' }, 'find'],
  ['wells.open', {}, 'id: '],
  ['wells.open', { id: '' }, 'id: '],
  ['wells.open', { id: 'a'.repeat(65) }, 'id: '],
  ['wells.open', { id: 'a', revision: 1 }, 'revision'],
  ['wells.openRevision', { id: 'a' }, 'revision: '],
  ['wells.openRevision', { id: 'a', revision: 0 }, 'revision: '],
  ['wells.openRevision', { id: 'a', revision: 1.5 }, 'revision: '],
  ['wells.openRevision', { id: 'a', revision: '1' }, 'revision: '],
  ['wells.openRevision', { id: '', revision: 1 }, 'id: '],
  ['wells.openRevision', { id: 'a', revision: 1, record }, 'record'],
  ['wells.save', { id: 'a', record }, 'revision: '],
  ['wells.save', { revision: 1, record }, 'id: '],
  ['wells.save', { id: 'a', revision: 1 }, 'record: '],
  ['wells.save', { id: 'a', revision: 1, record: null }, 'record: '],
  ['wells.save', { id: 'a', revision: 1, record: '{}' }, 'record: '],
  ['wells.save', { id: 'a', revision: -1, record }, 'revision: '],
  ['wells.save', { id: 'a', revision: 1, record, force: true }, 'force'],
  ['wells.create', {}, 'record: '],
  ['wells.create', { record: [record] }, 'record: '],
  ['wells.create', { record, id: 'a' }, 'id'],
  ['wells.revisions', { id: 7 }, 'id: '],
  ['wells.revisions', { id: 'a', from: 1 }, 'from'],
  ['attachments.put', {}, 'data: '],
  ['attachments.put', { data: '', name: 'a.jpg' }, 'name'],
  ['attachments.put', { data: '', copy: 7 }, 'copy: '],
  ['attachments.get', {}, 'hash: '],
  ['attachments.get', { hash: 'A1'.repeat(32) }, 'hash: '],
  ['attachments.printCopy', { hash: '../../archive' }, 'hash: '],
  ['settings.read', { language: 'fr' }, 'language'],
  ['settings.write', { language: 'xx' }, 'language: '],
  ['settings.write', { tablesPercent: 96 }, 'tablesPercent: '],
  ['papers.asBuilt', { id: 'a' }, 'paper: '],
  ['papers.asBuilt', { id: 'a', paper: 'a4' }, 'paper: '],
  ['papers.asBuilt', { paper: 'A4' }, 'id: '],
  ['papers.asBuilt', { id: 'a', paper: 'A4', language: 'xx' }, 'language: '],
  ['papers.asBuilt', { id: 'a', paper: 'A4', scale: 100 }, 'scale'],
];

describe('the arguments of a call', () => {
  it.each(Object.entries(right))('are taken by %s as they should be', (name, all) => {
    for (const args of all)
      expect(checkCall(name, args)).toEqual({ ok: true, value: { name, args } });
  });

  it.each(wrong)('are refused by %s when they are %j, with the place %j', (name, args, place) => {
    const checked = checkCall(name, args);
    expect(checked).toMatchObject({ ok: false, error: { code: 'badArguments' } });
    if (checked.ok) return;
    const { sentence } = checked.error;
    expect(sentence.startsWith(`The arguments of ${name} were not taken. `)).toBe(true);
    expect(sentence.endsWith('. Send them as the call expects.')).toBe(true);
    expect(sentence.slice(`The arguments of ${name} were not taken. `.length)).toContain(place);
  });

  it.each(callNames)('of %s are an object, not text, nothing or a list', (name) => {
    for (const args of ['{}', undefined, null, []])
      expect(checkCall(name, args)).toMatchObject({ ok: false, error: { code: 'badArguments' } });
  });

  it('are told all that is wrong with them in one sentence', () => {
    const checked = checkCall('wells.save', { id: '', revision: 0, record: 1 });
    if (checked.ok) throw new Error('it was taken');
    for (const place of ['id: ', '; revision: ', '; record: a record is a JSON object'])
      expect(checked.error.sentence).toContain(place);
  });

  it('are known here for every call, and refused for at least one reason each', () => {
    expect(Object.keys(right).sort()).toEqual([...callNames].sort());
    expect([...new Set(wrong.map(([name]) => name))].sort()).toEqual([...callNames].sort());
  });
});
