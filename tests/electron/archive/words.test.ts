import { describe, expect, it } from 'vitest';
import { everyWord, searchText, wordsOf } from '../../../electron/archive/words.ts';

describe('what a well is found by', () => {
  it('comes from each chapter under its own heading', () => {
    const record = {
      identity: {
        ...{ number: 'N1', contract: 'C2', permit: 'P3', name: 'School', client: 'Client' },
        ...{ contractor: 'Builder', driller: 'Driller', supervisor: 'Boss', programme: 'Wells' },
      },
      site: {
        ...{ country: 'Land', region: 'North', district: 'Kalo', commune: 'Com' },
        ...{ village: 'Lémo', spot: 'Market' },
        committee: { name: 'Water group', chair: 'Chair', caretaker: 'Keeper' },
      },
      marks: [{ name: 'Signer', organisation: 'Office' }, { name: 7 }],
    };
    expect(searchText(record)).toEqual({
      number: 'N1\nC2\nP3',
      name: 'School',
      places: 'Land\nNorth\nKalo\nCom\nLémo\nMarket',
      people: 'Client\nBuilder\nDriller\nBoss\nWells\nWater group\nChair\nKeeper\nSigner\nOffice',
      remarks: '',
      log: '',
    });
  });

  it('takes remarks at any depth, under each of their names, and nothing beside them', () => {
    const record = {
      notes: 'one',
      log: [{ remarks: 'two', words: 'three', colour: 'red' }],
      photos: [{ caption: 'four' }],
      pump: { deep: { remark: 'five' } },
      odd: { notes: { remark: 'six' } },
    };
    expect(searchText(record).remarks).toBe('one\ntwo\nthree\nfour\nfive\nsix');
  });

  it('is empty for a record in any condition, and never fails', () => {
    const empty = { number: '', name: '', places: '', people: '', remarks: '', log: '' };
    for (const record of [null, 7, 'text', [], {}, { identity: 7, site: [], marks: 'x' }])
      expect(searchText(record)).toEqual(empty);
  });

  it('writes a letter with its accent as one sign, as it is searched for', () => {
    expect(searchText({ identity: { name: 'Le\u0301mo' } }).name).toBe('L\u00e9mo');
  });
});

describe('the words of the index', () => {
  it('stand plainly and once, whatever chapter they are of', () => {
    const site = { village: 'Lémo', spot: 'École, 2e cour', district: 'LÉMO' };
    const log = [{ material: 'madeGround', colour: 'reddish', remarks: 'cœur\u0301 lémo' }];
    expect(wordsOf({ site, log })).toBe('lemo ecole 2e cour coeur madeground reddish');
  });
});

describe('the words that were typed', () => {
  it.each([
    ['ka-012', '"ka"* AND "012"*'],
    ['  Lémo   school ', '"lemo"* AND "school"*'],
    ['le\u0301mo', '"lemo"*'],
    ['a"b OR c*', '"a"* AND "b"* AND "or"* AND "c"*'],
    ['tuf', '("tuf"* OR "tuff")'],
    ['remblai sec', '("remblai"* OR "madeground") AND "sec"*'],
    ['“—”', ''],
    ['', ''],
  ])('%j become the query %j', (typed, query) => {
    expect(everyWord(typed)).toBe(query);
  });
});
