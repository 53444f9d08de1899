import { describe, expect, it } from 'vitest';
import { callNames, checkCall, joinAreas } from '../../../core/contract/index.ts';

const record = { schemaVersion: 1, later: { kept: true } };

function sentenceFor(name: string, args: unknown): string {
  const checked = checkCall(name, args);
  return checked.ok ? '' : checked.error.sentence;
}

describe('the check of a call', () => {
  it('lets a good call through with its arguments as given', () => {
    const args = { record };
    expect(checkCall('wells.create', args)).toEqual({
      ok: true,
      value: { name: 'wells.create', args },
    });
  });

  it('names a call that does not exist', () => {
    expect(sentenceFor('wells.burn', {})).toBe(
      'There is no call named wells.burn. Use one of the listed calls.',
    );
    expect(checkCall('constructor', {})).toMatchObject({ error: { code: 'unknownCall' } });
  });

  it('says at which argument the trouble is', () => {
    expect(sentenceFor('wells.openRevision', { id: 'a', revision: 'two' })).toMatch(
      /^The arguments of wells\.openRevision were not taken\. revision: .*number/,
    );
    expect(sentenceFor('wells.create', { record: [] })).toContain(
      'record: a record is a JSON object',
    );
    expect(sentenceFor('papers.asBuilt', { id: 'a', paper: 'A0' })).toContain('paper: ');
  });

  it('refuses arguments that are missing, too many, or no object', () => {
    expect(checkCall('wells.open', {}).ok).toBe(false);
    expect(checkCall('wells.open', { id: 'a', also: 1 }).ok).toBe(false);
    expect(checkCall('archive.state', null).ok).toBe(false);
    expect(checkCall('wells.list', { search: undefined }).ok).toBe(false);
  });

  it('takes each listed name as a call', () => {
    for (const name of callNames)
      expect(checkCall(name, 0)).toMatchObject({ error: { code: 'badArguments' } });
    expect(callNames).toContain('wells.list');
  });

  it('stops at the start when two areas use one name', () => {
    expect(() => joinAreas([{ 'a.b': 1 }, { 'a.b': 2 }])).toThrow(
      'two areas have a call named a.b',
    );
  });
});
