import { describe, expect, it } from 'vitest';
import { everyWord, searchText } from '../../../electron/archive/words.ts';

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

describe('the words that were typed', () => {
  it.each([
    ['ka-012', '"ka"* "012"*'],
    ['  Lémo   school ', '"Lémo"* "school"*'],
    ['le\u0301mo', '"lémo"*'],
    ['a"b OR c*', '"a"* "b"* "OR"* "c"*'],
    ['“—”', ''],
    ['', ''],
  ])('%j become the query %j', (typed, query) => {
    expect(everyWord(typed)).toBe(query);
  });
});
