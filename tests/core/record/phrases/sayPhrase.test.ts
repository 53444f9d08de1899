import { describe, expect, it } from 'vitest';
import { phrase } from '../../../../core/record/phrases/phrase.ts';
import { sayPhrase } from '../../../../core/record/phrases/sayPhrase.ts';

describe('a phrase in words', () => {
  it('says the phrases within it', () => {
    const remedy = phrase('write', { what: phrase('hintDegrees', { from: -90, to: 90 }) });
    expect(sayPhrase(phrase('missing', { remedy }))).toBe(
      'nothing stands here; write degrees from -90 to 90, as in 12.3456',
    );
  });

  it('shows readings as figures and counts as they are, with the mark of the language', () => {
    const values = { figure: 7.5, other: 'log[0].from', otherFigure: 8 };
    expect(sayPhrase(phrase('above', values))).toBe('7.5 is above log[0].from 8.0');
    expect(sayPhrase(phrase('above', values), 'pt')).toBe('7,5 fica acima de log[0].from 8,0');
    expect(sayPhrase(phrase('list', { count: 3 }), 'fr')).toBe('une liste de 3');
  });

  it('rounds a reading to thousandths', () => {
    const values = { figure: 0.1 + 0.2, other: 'x', otherFigure: 1 };
    expect(sayPhrase(phrase('lessThan', values))).toBe('0.3 is less than x 1.0');
  });

  it('leaves a place open for which there is no value', () => {
    expect(sayPhrase(phrase('list'))).toBe('a list of {count}');
  });

  it('does not read places in what people wrote', () => {
    const remedy = phrase('oneOf', { words: 'a, b' });
    expect(sayPhrase(phrase('unknownWord', { found: '"{remedy}"', remedy }))).toBe(
      '"{remedy}" is not a known word; write one of a, b',
    );
  });
});
