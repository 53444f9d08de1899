import { describe, expect, it } from 'vitest';
import { titleFields } from '../../../../../core/drawing/papers/asBuilt/titleFields.ts';
import { record } from '../../../model/well.ts';
import { kit } from '../../sample.ts';

const facts = { madeAt: '2026-01-31T23:30:00+01:00', sheet: 2, sheets: 3 };
const fields = (chapters: Parameters<typeof record>[0], more: object = {}) =>
  titleFields(kit, record(chapters), { ...facts, ...more });

describe('the fields of the title block', () => {
  it('have dashes and blanks for what nobody wrote', () => {
    expect(fields({})).toMatchObject({
      title: '–',
      number: '–',
      client: '',
      revision: '–',
      depthScale: '–',
      widthScale: '–',
    });
  });

  it('name the document by what the well has become', () => {
    const components = [{ kind: 'plain' as const }];
    expect(fields({ strings: [{ components }] }).documentType).toBe('As-built completion diagram');
    expect(fields({ identity: { state: 'laidOut' }, strings: [{ components }] }).documentType).toBe(
      'Laying-out of the completion',
    );
    expect(fields({}).documentType).toBe('Record of a hole without a well');
  });

  it('take the village where the well has no name', () => {
    expect(fields({ site: { village: 'Ɓirassolé' } }).title).toBe('Ɓirassolé');
    expect(fields({ identity: { name: 'Market' }, site: { village: 'Ɓ' } }).title).toBe('Market');
  });

  it('say page, day, revision and scales', () => {
    expect(fields({}, { revision: 4, depthScale: 200, widthScale: 5 })).toMatchObject({
      sheet: '2 of 3',
      date: '2026-01-31',
      revision: '4',
      depthScale: '1:200',
      widthScale: '1:5',
    });
  });

  it('say that a sheet which nobody issued is none', () => {
    expect(fields({ identity: { state: 'completed' } }).status).toBe('completed, not issued');
  });

  it('say that a sheet of what is in no revision is a draft', () => {
    const draft = fields({ identity: { state: 'completed' } }, { draft: true });
    expect(draft).toMatchObject({ status: 'completed, draft', revision: '–' });
  });
});
