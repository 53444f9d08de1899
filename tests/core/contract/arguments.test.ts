import { describe, expect, it } from 'vitest';
import { callNames, checkCall } from '../../../core/contract/index.ts';
import { usualBinder } from '../../../core/contract/usualBinder.ts';
import type { CallName } from '../../../core/contract/calls.ts';

const record = { schemaVersion: 1 };

/** What a binder shall hold. */
const binder = usualBinder('Wells', 'en');

const fingerprint = Array(32).fill('A1').join(':');

/** A move with one change. */
const edit = (change: object) => ({ kind: 'edit', patch: [change] });

/** Arguments that each call takes: the fewest, and the widest that still go. */
const right: Readonly<Record<CallName, readonly object[]>> = {
  'archive.state': [{}],
  'archive.check': [{}],
  'wells.list': [{}, { search: '' }, { search: 'é'.repeat(200) }],
  'wells.open': [{ id: 'a' }, { id: 'a'.repeat(64) }],
  'wells.openRevision': [{ id: 'a', revision: 1 }],
  'wells.desk': [{ id: 'a' }],
  'wells.edit': [
    { id: 'a', upon: 0, moves: [{ kind: 'undo', patch: [] }] },
    { id: 'a', upon: 9e6, moves: [edit({ at: ['record', 'log', 3, 'to'], to: 1.5 })] },
    {
      id: 'a',
      upon: 1,
      moves: [edit({ at: ['record'], to: record }), edit({ at: ['record', 'x'] })],
    },
    { id: 'a', upon: 1, moves: [edit({ at: ['typed', 'log[3].to'], to: '3x' })] },
    { id: 'a', upon: 1, moves: [{ kind: 'amend', patch: [{ at: ['typed', 'log[3].to'] }] }] },
  ],
  'wells.save': [
    { id: 'a', upon: 0 },
    { id: 'a', upon: 9e6 },
    { id: 'a', upon: 1, reason: 'measured again' },
  ],
  'wells.compare': [{ id: 'a', before: 3, now: 1, language: 'fr' }],
  'wells.revert': [
    { id: 'a', revision: 2 },
    { id: 'a', revision: 2, reason: 'x' },
  ],
  'wells.leave': [{ id: 'a', upon: 3 }],
  'wells.create': [{ record }, { record: {} }],
  'wells.revisions': [{ id: 'a' }],
  'list.find': [
    { filter: {} },
    {
      filter: {
        search: '',
        regions: [],
        districts: [''],
        states: ['dry', ''],
        yearFrom: 0,
        yearTo: 9999,
        findings: ['wrong', 'look', 'none'],
      },
      order: { by: 'findings', down: true },
      from: 100_000,
      limit: 500,
    },
  ],
  'list.rank': [{ filter: {}, id: 'a' }],
  'list.named': [{ ids: [] }, { ids: Array(500).fill('a') }],
  'list.map': [{ filter: {} }],
  'list.choices': [{}],
  'list.goThrough': [{}],
  'binders.list': [{}],
  'binders.put': [
    { name: 'a', wish: binder },
    {
      name: 'é'.repeat(120),
      wish: {
        ...binder,
        wells: { filter: { districts: [''] }, ids: ['a'] },
        papers: [
          { kind: 'layingOut', language: 'pt' },
          { kind: 'committee', languages: ['fr', 'en'] },
        ],
        paper: 'A3',
        sections: [{ title: 'x', wellIds: ['a', 'b'], joins: [] }],
        mostPages: 1000,
      },
    },
  ],
  'binders.remove': [{ name: 'a' }],
  'binders.start': [{ name: 'a' }],
  'binders.stop': [{}],
  'binders.state': [{}],
  'binders.file': [{ fileName: 'a.pdf' }],
  'imports.open': [{ files: [{ name: 'a.csv', data: '' }] }],
  'imports.rows': [{ table: 0 }, { table: 1, encoding: 'windows-1252', delimiter: ';' }],
  'imports.look': [{}, { mapping: { tables: [] } }],
  'imports.bring': [
    { choices: { known: 'leave' } },
    { mapping: {}, choices: { known: 'add', single: { 3: 'revise' } }, author: '', reason: 'x' },
  ],
  'imports.stop': [{}],
  'imports.close': [{}],
  'imports.mappings': [{}],
  'imports.keepMapping': [{ name: 'Lot 3', mapping: {} }],
  'imports.dropMapping': [{ name: 'Lot 3' }],
  'practices.list': [{}],
  'practices.put': [{ practice: {} }, { practice: { id: 'ours' } }],
  'practices.remove': [{ id: 'ours' }],
  'guidelines.list': [{}],
  'guidelines.put': [{ set: {} }, { set: { id: 'ours' } }],
  'guidelines.remove': [{ id: 'ours' }],
  'templates.list': [{}],
  'templates.put': [
    { name: 'office', template: {}, logos: [] },
    { name: 'office', template: { name: ['A'] }, logos: [{ name: 'a.png', data: '' }] },
  ],
  'templates.choose': [{}, { name: 'office' }],
  'templates.remove': [{ name: 'office' }],
  'bin.list': [{}],
  'bin.put': [{ id: 'a' }],
  'bin.putBack': [{ id: 'a' }],
  'bin.empty': [{ ids: [] }, { ids: ['a', 'b'] }],
  'copies.list': [{}],
  'copies.make': [{}],
  'copies.restore': [{ fileName: 'Kalo 2025-03-01.borefolio' }],
  'copies.look': [{ place: 'beside', fileName: 'Other.borefolio' }],
  'copies.compare': [{ place: 'backups', fileName: 'Other.borefolio', id: 'a', language: 'fr' }],
  'copies.take': [
    { place: 'beside', fileName: 'Other.borefolio', choices: {} },
    { place: 'beside', fileName: 'Other.borefolio', choices: { a: 'ours', b: 'two' } },
  ],
  'backdrops.list': [{}],
  'backdrops.add': [{ fileName: 'a.geojson', text: '' }],
  'backdrops.remove': [{ id: 'a' }],
  'attachments.put': [{ data: '' }, { data: '/9j/', copy: '/9j/' }],
  'attachments.get': [{ hash: 'a1'.repeat(32) }],
  'attachments.printCopy': [{ hash: 'a1'.repeat(32) }],
  'papers.asBuilt': [
    { id: 'a', paper: 'A3', orientation: 'portrait', columns: ['colour', 'rate'] },
    { id: 'a', paper: 'A4' },
    { id: 'a', paper: 'A3' },
    { id: 'a', paper: 'A4', language: 'pt' },
  ],
  'papers.newest': [{ id: 'a', language: 'fr' }],
  'papers.layingOut': [{ id: 'a' }, { id: 'a', language: 'fr', attachRecord: true }],
  'papers.batch': [{ ids: ['a', 'b'], paper: 'A3', language: 'fr' }],
  'export.make': [
    { filter: {}, into: 'csv', bom: true },
    { filter: { search: 'a' }, into: 'gwml' },
  ],
  'papers.checkPage': [{ paper: 'A4' }, { paper: 'A3', language: 'pt' }],
  'issues.list': [{ id: 'a' }],
  'issues.make': [
    { id: 'a', paper: { kind: 'asBuilt', paper: 'A4' } },
    { id: 'a', paper: { kind: 'asBuilt', paper: 'A3', language: 'pt' } },
    { id: 'a', paper: { kind: 'layingOut', language: 'fr' } },
    { id: 'a', paper: { kind: 'committee', languages: ['fr', 'en'] } },
  ],
  'issues.pdf': [{ id: 'a', number: 1 }],
  'issues.seal': [
    { id: 'a', number: 1, fingerprint, passphrase: 'x', role: 'client' },
    { id: 'a', number: 1, fingerprint, passphrase: 'x', role: 'client', place: 'Lémo' },
  ],
  'identities.list': [{}],
  'identities.make': [
    { name: 'Adéwa', passphrase: 'x' },
    { name: 'Adéwa', organisation: 'Office', passphrase: 'x' },
  ],
  'identities.take': [{ file: 'AA==', passphrase: '' }],
  'identities.remove': [{ fingerprint }],
  'seals.read': [{ pdf: '' }],
  'papers.committee': [
    { id: 'a', languages: ['pt'] },
    { id: 'a', languages: ['fr', 'en'], paper: 'A3', attachRecord: true },
  ],
  'papers.drawingFile': [
    { id: 'a', paper: { kind: 'layingOut' }, page: 1, format: 'svg' },
    {
      id: 'a',
      paper: { kind: 'asBuilt', paper: 'A3', language: 'fr' },
      page: 2,
      format: 'png',
      dpi: 1200,
    },
  ],
  'printing.ways': [{}],
  'printing.print': [
    { fileName: 'a.pdf', pdf: 'JVBERi0=' },
    { fileName: 'a.pdf', pdf: '', printer: 'Office' },
  ],
  'settings.read': [{}],
  'settings.write': [
    {},
    { language: 'fr', contrast: 'high', tablesPercent: 40 },
    { sheetOrientation: 'landscape', sheetColumns: ['colour', 'rate'] },
    { sheetOrientation: 'usual', sheetColumns: 'byRecord', sheetAxis: 'whole' },
  ],
};

/** Arguments that each call refuses, and the argument that its sentence must name. */
const wrong: readonly (readonly [name: CallName, args: unknown, place: string])[] = [
  ['issues.list', {}, 'id: '],
  ['issues.make', { id: 'a', paper: { kind: 'poster' } }, 'paper.kind: '],
  ['issues.make', { id: 'a', paper: { kind: 'asBuilt', paper: 'A5' } }, 'paper.paper: '],
  ['issues.pdf', { id: 'a', number: 0 }, 'number: '],
  ['issues.seal', { id: 'a', number: 1, fingerprint, passphrase: 'x', role: 'king' }, 'role: '],
  [
    'issues.seal',
    { id: 'a', number: 1, fingerprint: '../a', passphrase: 'x', role: 'client' },
    'fingerprint: ',
  ],
  ['identities.list', { all: true }, 'all'],
  ['identities.make', { name: 'Adéwa' }, 'passphrase: '],
  ['identities.take', { passphrase: '' }, 'file: '],
  ['identities.remove', { fingerprint: 'aa' }, 'fingerprint: '],
  ['seals.read', { pdf: 7 }, 'pdf: '],
  [
    'papers.drawingFile',
    { id: 'a', paper: { kind: 'layingOut' }, page: 0, format: 'svg' },
    'page: ',
  ],
  [
    'papers.drawingFile',
    { id: 'a', paper: { kind: 'layingOut' }, page: 1, format: 'pdf' },
    'format: ',
  ],
  ['archive.state', { id: 'a' }, 'id'],
  ['archive.check', { deep: true }, 'deep'],
  ['imports.open', { files: [] }, 'files: '],
  ['imports.open', { files: [{ name: '', data: '' }] }, 'files[0].name: '],
  ['imports.rows', { table: 0, encoding: 'ebcdic' }, 'encoding: '],
  ['imports.look', { mapping: [] }, 'mapping: '],
  ['imports.bring', { choices: { known: 'all' } }, 'choices.known: '],
  ['imports.stop', { now: true }, 'now'],
  ['imports.close', { now: true }, 'now'],
  ['imports.mappings', { of: 'me' }, 'of'],
  ['imports.keepMapping', { name: '', mapping: {} }, 'name: '],
  ['imports.dropMapping', {}, 'name: '],
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
  ['wells.desk', {}, 'id: '],
  ['wells.desk', { id: 'a', edit: 1 }, 'edit'],
  ['wells.edit', { id: 'a', upon: 1 }, 'moves: '],
  ['wells.edit', { id: 'a', upon: 1, moves: [] }, 'moves: '],
  ['wells.edit', { id: 'a', upon: -1, moves: [edit({ at: ['record'] })] }, 'upon: '],
  ['wells.edit', { id: 'a', upon: 1, moves: [{ kind: 'burn', patch: [] }] }, 'moves[0].kind: '],
  ['wells.edit', { id: 'a', upon: 1, moves: [{ kind: 'edit' }] }, 'moves[0].patch: '],
  ['wells.edit', { id: 'a', upon: 1, moves: [edit({ at: [], to: 1 })] }, 'moves[0].patch[0]'],
  [
    'wells.edit',
    { id: 'a', upon: 1, moves: [edit({ at: ['other'], to: 1 })] },
    'moves[0].patch[0]',
  ],
  [
    'wells.edit',
    { id: 'a', upon: 1, moves: [edit({ at: ['typed', 'x'], to: 1 })] },
    'moves[0].patch[0]',
  ],
  [
    'wells.edit',
    { id: 'a', upon: 1, moves: [edit({ at: ['typed'], to: {} })] },
    'moves[0].patch[0]',
  ],
  ['wells.edit', { id: 'a', upon: 1, moves: [edit({ at: ['record', -1] })] }, 'moves[0].patch[0]'],
  ['wells.save', { id: 'a' }, 'upon: '],
  ['wells.save', { upon: 1 }, 'id: '],
  ['wells.save', { id: 'a', upon: '1' }, 'upon: '],
  ['wells.save', { id: 'a', upon: -1 }, 'upon: '],
  ['wells.save', { id: 'a', upon: 1, record }, 'record'],
  ['wells.compare', { id: 'a', before: 0, now: 1, language: 'en' }, 'before: '],
  ['wells.revert', { id: 'a', revision: 1, reason: 7 }, 'reason: '],
  ['wells.leave', { id: 'a', upon: 0.5 }, 'upon: '],
  ['wells.create', {}, 'record: '],
  ['wells.create', { record: [record] }, 'record: '],
  ['wells.create', { record, id: 'a' }, 'id'],
  ['wells.revisions', { id: 7 }, 'id: '],
  ['wells.revisions', { id: 'a', from: 1 }, 'from'],
  ['list.find', {}, 'filter: '],
  ['list.find', { filter: { place: 'Zou' } }, 'place'],
  ['list.find', { filter: { states: ['gone'] } }, 'filter.states[0]: '],
  ['list.find', { filter: { yearFrom: 2020.5 } }, 'filter.yearFrom: '],
  ['list.find', { filter: {}, order: { by: 'seq; DROP TABLE well' } }, 'order.by: '],
  ['list.find', { filter: {}, limit: 501 }, 'limit: '],
  ['list.find', { filter: {}, from: -1 }, 'from: '],
  ['list.rank', { filter: {} }, 'id: '],
  ['list.named', { ids: Array(501).fill('a') }, 'ids: '],
  ['list.map', { filter: { findings: 'wrong' } }, 'filter.findings: '],
  ['list.choices', { filter: {} }, 'filter'],
  ['list.goThrough', { most: 9 }, 'most'],
  ['bin.list', { id: 'a' }, 'id'],
  ['bin.put', {}, 'id: '],
  ['bin.putBack', { id: '' }, 'id: '],
  ['bin.empty', {}, 'ids: '],
  ['bin.empty', { ids: [7] }, 'ids[0]: '],
  ['copies.list', { id: 'a' }, 'id'],
  ['copies.make', { fileName: 'a' }, 'fileName'],
  ['copies.restore', { fileName: '../a.borefolio' }, 'fileName: '],
  ['copies.look', { place: 'elsewhere', fileName: 'a' }, 'place: '],
  ['copies.compare', { place: 'beside', fileName: 'a', id: 'a' }, 'language: '],
  ['copies.take', { place: 'beside', fileName: 'a', choices: { a: 'both' } }, 'choices.a: '],
  ['backdrops.list', { id: 'a' }, 'id'],
  ['backdrops.add', { fileName: 'a.geojson' }, 'text: '],
  ['backdrops.add', { fileName: 'a'.repeat(301), text: '' }, 'fileName: '],
  ['backdrops.remove', {}, 'id: '],
  ['binders.list', { name: 'a' }, 'name'],
  ['binders.put', { name: ' ', wish: binder }, 'name: '],
  ['binders.put', { name: 'a', wish: { ...binder, mostPages: 9 } }, 'mostPages: '],
  [
    'binders.put',
    { name: 'a', wish: { ...binder, papers: [...binder.papers, ...binder.papers] } },
    'a paper is twice',
  ],
  ['binders.remove', { name: '' }, 'name: '],
  ['binders.start', {}, 'name: '],
  ['binders.stop', { name: 'a' }, 'name'],
  ['binders.state', { name: 'a' }, 'name'],
  ['binders.file', { fileName: '' }, 'fileName: '],
  ['practices.list', { id: 'a' }, 'id'],
  ['practices.put', { practice: [] }, 'practice: '],
  ['practices.remove', { id: '' }, 'id: '],
  ['guidelines.list', { id: 'a' }, 'id'],
  ['guidelines.put', { set: [] }, 'set: '],
  ['guidelines.remove', { id: '' }, 'id: '],
  ['templates.list', { name: 'a' }, 'name'],
  ['templates.put', { name: 'a', template: [], logos: [] }, 'template: '],
  ['templates.put', { name: 'a', template: {}, logos: [{ name: 'a.png' }] }, 'logos[0].data: '],
  ['templates.choose', { name: null }, 'name: '],
  ['templates.remove', { name: ' ' }, 'name: '],
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
  ['papers.asBuilt', { id: 'a', paper: 'A4', orientation: 'up' }, 'orientation: '],
  ['papers.asBuilt', { id: 'a', paper: 'A4', columns: ['tint'] }, 'columns[0]: '],
  ['settings.write', { sheetOrientation: 'up' }, 'sheetOrientation: '],
  ['settings.write', { sheetColumns: 'all' }, 'sheetColumns: '],
  ['settings.write', { sheetAxis: 'never' }, 'sheetAxis: '],
  ['papers.newest', { id: 'a' }, 'language: '],
  ['papers.layingOut', { id: 'a', paper: 'A4' }, 'paper'],
  ['export.make', { filter: {}, into: 'svg' }, 'into'],
  ['papers.batch', { ids: [], paper: 'A4' }, 'ids'],
  ['papers.batch', { ids: Array(61).fill('a'), paper: 'A4' }, 'ids'],
  ['papers.checkPage', { paper: 'A5' }, 'paper'],
  ['papers.committee', { id: 'a', languages: [] }, 'languages: '],
  ['papers.committee', { id: 'a', languages: ['en', 'fr', 'pt'] }, 'languages: '],
  ['papers.committee', { id: 'a', languages: ['xx'] }, 'languages'],
  ['printing.print', { fileName: '', pdf: '' }, 'fileName'],
  ['printing.ways', { all: true }, 'all'],
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
    const checked = checkCall('wells.edit', { id: '', upon: -1, moves: 1 });
    if (checked.ok) throw new Error('it was taken');
    for (const place of ['id: ', '; upon: ', '; moves: '])
      expect(checked.error.sentence).toContain(place);
  });

  it('are known here for every call, and refused for at least one reason each', () => {
    expect(Object.keys(right).sort()).toEqual([...callNames].sort());
    expect([...new Set(wrong.map(([name]) => name))].sort()).toEqual([...callNames].sort());
  });
});
