import { describe, expect, it } from 'vitest';
import { readTemplate } from '../../../core/template/readTemplate.ts';

const sentenceOf = (written: unknown) => {
  const read = readTemplate(written);
  return read.ok ? '' : read.error.sentence;
};

describe('a template', () => {
  it('needs no more than a name', () => {
    expect(readTemplate({ name: ['Water office'] })).toEqual({
      ok: true,
      value: { name: ['Water office'], address: [], logos: [], labels: {} },
    });
  });

  it('is refused with the place of every fault and what to write there', () => {
    const sentence = sentenceOf({ name: [], logos: [{ says: 'x', file: '../y.png' }], colour: 1 });
    expect(sentence).toContain('name: write at least one line of the name');
    expect(sentence).toContain('logos[0].file: write the name of a file that lies beside');
    expect(sentence).toContain('colour: there is no such field');
  });

  it('is refused with more than the strip has room for', () => {
    expect(sentenceOf({ name: ['a', 'b', 'c', 'd'] })).toContain('room for 3 lines of the name');
  });

  it('wants either a file or data for a logo', () => {
    expect(sentenceOf({ name: ['a'], logos: [{ says: 'x' }] })).toContain(
      'logos[0]: give a logo either file or data',
    );
  });

  it('is an object and nothing else', () => {
    expect(sentenceOf([])).toContain('the template: a template is an object');
  });
});
