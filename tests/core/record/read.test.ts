import { describe, expect, it } from 'vitest';
import { readRecord, type ReadRecord } from '../../../core/record/read.ts';
import { phrase } from '../../../core/record/phrases/phrase.ts';
import { placeInDocument } from '../../../core/record/prune.ts';
import { currentVersion } from '../../../core/record/schema.ts';

function read(document: object): ReadRecord {
  const reading = readRecord({ schemaVersion: currentVersion, ...document });
  if (reading.kind !== 'ok') throw new Error(`Not read: ${JSON.stringify(reading)}`);
  return reading;
}

function sentences(document: object): string[] {
  return read(document).troubles.map(({ sentence }) => sentence);
}

describe('readRecord', () => {
  it('reads an empty record without troubles', () => {
    expect(read({}).troubles).toEqual([]);
    expect(read({}).record).toEqual({ schemaVersion: currentVersion });
  });

  it('names place, what stood there and what to write for a depth in words', () => {
    const row = { from: 0, to: 1 };
    expect(sentences({ log: [row, row, row, { from: 1, to: 'deep' }] })).toEqual([
      'log[3].to: "deep" is not a number; write metres below ground, as in 12.5',
    ]);
  });

  it.each([
    [
      { bore: { startedOn: '14/03/2026' } },
      'bore.startedOn: "14/03/2026" is not a day of the calendar; write year, month and day, as in 2026-03-14',
    ],
    [
      { site: { latitude: 123 } },
      'site.latitude: 123 is more than 90; write degrees from -90 to 90, as in 12.3456',
    ],
    [
      { site: { households: 3.5 } },
      'site.households: 3.5 is not a whole number; write a whole number, as in 3',
    ],
    [
      { pump: { bodyDiameter: -90 } },
      'pump.bodyDiameter: -90 is less than 0; write millimetres, as in 125',
    ],
    [
      { pump: { intake: null } },
      'pump.intake: null is no value; leave the field out where not known, or write metres below ground, as in 12.5',
    ],
    [
      { strings: [{ components: [], set: { by: 'top' } }] },
      'strings[0].set.by: "top" is not a known word; write one of bottom, stickUp',
    ],
    [{ log: {} }, 'log: a group of fields is not a list; write a list'],
    [
      { log: [{ from: 0, to: 1, material: 'sandd' }] },
      'log[0].material: "sandd" is not a known word; did you mean "sand"?',
    ],
    [
      { log: [{ from: 0, to: 1, material: 'cheese' }] },
      'log[0].material: "cheese" is not a known word; write one of the 49 known words, such as topsoil, madeGround, clay',
    ],
    [
      { levels: [{ reading: 3, datum: 'ground', at: 'May' }] },
      'levels[0].at: "May" cannot be read; write day, time and offset, as in 2026-03-14T09:30+01:00',
    ],
    [
      { marks: [{ role: 'client', strokes: [[[1, 2, 3]]] }] },
      'marks[0].strokes[0][0]: a list of 3 is too long; write another',
    ],
  ])('says of %j what is wrong', (document, sentence) => {
    expect(sentences(document)).toEqual([sentence]);
  });

  it('cuts a long text short where it names it', () => {
    const [sentence] = sentences({ bore: { depthReached: 'x'.repeat(500) } });
    expect(sentence!.length).toBeLessThan(120);
  });

  it('leaves out a field of the wrong kind and keeps the rest', () => {
    const { record, document } = read({ bore: { depthReached: '30', rig: 'tripod' } });
    expect(record.bore).toEqual({ rig: 'tripod' });
    expect(document['bore']).toEqual({ depthReached: '30', rig: 'tripod' });
  });

  it('leaves out an interval without a foot, and only that one', () => {
    const log = [{ from: 0, to: 2 }, { from: 2 }, { from: 4, to: 6 }];
    const { record, troubles, places } = read({ log });
    expect(record.log).toEqual([log[0], log[2]]);
    expect(troubles).toEqual([
      {
        path: 'log[1].to',
        code: 'missing',
        values: { remedy: phrase('write', { what: phrase('hintDepth') }) },
        sentence: 'log[1].to: nothing stands here; write metres below ground, as in 12.5',
      },
    ]);
    expect(placeInDocument(places, 'log[1].to')).toBe('log[2].to');
    expect(placeInDocument(places, 'log[0].to')).toBe('log[0].to');
  });

  it('says one trouble for one cause, however much has to go with it', () => {
    const marks = [{ role: 'client', strokes: [[[1, 'two']]] }];
    expect(sentences({ marks })).toEqual([
      'marks[0].strokes[0][0][1]: "two" is not a number; write a number',
    ]);
    expect(read({ marks }).record.marks).toEqual([{ role: 'client', strokes: [[]] }]);
  });

  it('keeps the place of a string that cannot be read, since fills point at it', () => {
    const strings = [null, { name: 'outer' }, { components: [{ kind: 'plain' }] }];
    expect(read({ strings }).record.strings).toEqual([
      { components: [] },
      { components: [], name: 'outer' },
      { components: [{ kind: 'plain' }] },
    ]);
  });

  it('names a likely misspelling and keeps the key', () => {
    const strings = [{ components: [{ kind: 'plain', lenght: 2.9 }] }];
    const reading = read({ strings });
    expect(reading.troubles).toEqual([
      {
        path: 'strings[0].components[0].lenght',
        code: 'misspelledKey',
        values: { meant: 'length' },
        sentence: 'strings[0].components[0].lenght: no such field; did you mean length?',
      },
    ]);
    expect(reading.record.strings).toEqual(strings);
  });

  it('accepts a moment to the minute, to the second, and a day alone', () => {
    const levels = ['2026-03-14T09:30+01:00', '2026-03-14T09:30:15Z', '2026-03-14'].map((at) => ({
      at,
      reading: 6.2,
      datum: 'ground',
    }));
    expect(sentences({ levels })).toEqual([]);
    expect(sentences({ levels: [{ ...levels[0], at: '2026-02-30' }] })).toHaveLength(1);
    expect(sentences({ levels: [{ ...levels[0], at: '2026-03-14T09:30' }] })).toHaveLength(1);
  });

  it('refuses a record of a newer version with a sentence', () => {
    expect(readRecord({ schemaVersion: currentVersion + 1, log: 'anything' })).toEqual({
      kind: 'tooNew',
      version: currentVersion + 1,
      sentence:
        `schemaVersion: this record has version ${currentVersion + 1}, newer than this program ` +
        `knows (${currentVersion}); open it with a newer Borefolio`,
    });
  });

  it.each([
    [undefined, 'record: '],
    [null, 'record: null is not a record'],
    ['{}', 'record: "{}" is not a record'],
    [[1, 2], 'record: a list of 2 is not a record'],
    [{ schemaVersion: 'one' }, 'schemaVersion: "one" is no version'],
    [{ schemaVersion: -1 }, 'schemaVersion: -1 is no version'],
    [{ casing: 'six pipes' }, 'record: casing is not a list; bringing it to version 1'],
  ])('fails on %j and says why', (document, start) => {
    const reading = readRecord(document);
    if (reading.kind !== 'failed') throw new Error(`Read: ${JSON.stringify(reading)}`);
    expect(reading.troubles[0]!.sentence.slice(0, start.length)).toBe(start);
  });

  it('fails on what cannot be written as JSON instead of throwing', () => {
    const endless: Record<string, unknown> = {};
    endless['log'] = endless;
    expect(readRecord(endless).kind).toBe('failed');
    expect(readRecord({ site: { users: 10n } }).kind).toBe('failed');
  });

  it('freezes what it gives at every depth and leaves the given document alone', () => {
    const given = { schemaVersion: currentVersion, log: [{ from: 0, to: 1, own: { a: [1] } }] };
    const { record } = read(given);
    expect(() => Object.assign(record.log![0]!, { to: 5 })).toThrow(TypeError);
    expect(Object.isFrozen((record.log![0] as { own?: object }).own)).toBe(true);
    expect(Object.isFrozen(given)).toBe(false);
    expect(Object.isFrozen(given.log[0])).toBe(false);
    expect(Object.isFrozen(readRecord(5))).toBe(true);
    expect(Object.isFrozen(readRecord({ schemaVersion: 99 }))).toBe(true);
  });

  it('is not upset by a key that means something to the language', () => {
    const text = `{"schemaVersion":${currentVersion},"bore":{"__proto__":{"a":1},"depthReached":"x"}}`;
    const { record } = read(JSON.parse(text) as object);
    expect(JSON.stringify(record.bore)).toBe('{"__proto__":{"a":1}}');
  });
});
