import { describe, expect, it } from 'vitest';
import {
  basedOn,
  inAll,
  reworded,
  withFigure,
  withoutFigure,
  withPrice,
  withRule,
} from '../../../core/practice/editPractice.ts';
import { admitPractice } from '../../../core/practice/admitPractice.ts';
import { figures } from '../../../core/practice/figures.ts';
import { figureGroupIds, figuresIn } from '../../../core/practice/figureGroups.ts';
import { holdPractice } from '../../../core/practice/holdPractice.ts';
import { readPractice } from '../../../core/practice/readPractice.ts';
import { rules } from '../../../core/practice/rules/index.ts';
import { shippedPractices } from '../../../core/practice/shippedPractices.ts';
import type { PracticeFile } from '../../../core/practice/practice.ts';

const held = (file: PracticeFile) => {
  const practice = admitPractice(file, []);
  if (!practice.ok) throw new Error(practice.error.sentence);
  return practice.value;
};
const rock = holdPractice('machineRock', shippedPractices);
if (!rock.ok) throw new Error(rock.error.sentence);
const ours = basedOn(rock.value, 'ours');
const annex = { title: 'Annex 3', mark: 'read' } as const;

describe('a practice based on another', () => {
  it('says the same but for its id and version, until a figure is set', () => {
    expect(held(ours).figures).toEqual(rock.value.figures);
    expect(held(ours).basedOn).toEqual(['machineRock', 'handDrilled']);
  });

  it('has the figures that were set, with their source, and is read again as it is', () => {
    const set = withFigure(ours, 'latrineM', { value: 50, ...annex });
    expect(held(set).figures.latrineM).toEqual({
      value: 50,
      source: { title: inAll('Annex 3'), mark: 'read' },
      setBy: 'ours',
    });
    expect(readPractice(JSON.parse(JSON.stringify(set)))).toEqual({ ok: true, value: set });
  });

  it('keeps one source for the same words, and none that no figure names', () => {
    let file = withFigure(ours, 'latrineM', { value: 50, ...annex });
    file = withFigure(file, 'buildingM', { value: 5, ...annex });
    expect(Object.keys(file.sources)).toHaveLength(1);
    file = withFigure(file, 'buildingM', { value: 5, title: 'Site rules', mark: 'read' });
    expect(Object.values(file.sources).map(({ title }) => title.en)).toEqual([
      'Annex 3',
      'Site rules',
    ]);
    file = withoutFigure(withoutFigure(file, 'latrineM'), 'buildingM');
    expect(file).toEqual(ours);
  });

  it('asks for rules or not, and has prices of its own', () => {
    const [{ id } = { id: '' }] = rules;
    const without = withRule(ours, id, false);
    expect(held(without).without).toEqual([id]);
    expect(held(withRule(without, id, true)).without).toEqual([]);
    const priced = withPrice(ours, 'cementSack', { each: 5200, per: 'sack' });
    expect(held(priced).prices).toEqual({ cementSack: { each: 5200, per: 'sack' } });
    expect(withPrice(priced, 'cementSack').prices).toEqual({});
  });

  it('is worded anew in all languages, or in the one where they differ', () => {
    expect(reworded(inAll('Ours'), 'fr', 'La nôtre')).toEqual(inAll('La nôtre'));
    const words = { en: 'Ours', fr: 'La nôtre', pt: 'A nossa' };
    expect(reworded(words, 'pt', 'A de cá')).toEqual({ ...words, pt: 'A de cá' });
  });
});

it('every figure stands in one group', () => {
  const all = figureGroupIds.flatMap((group) => figuresIn(group));
  expect([...all].sort()).toEqual(Object.keys(figures).sort());
});
