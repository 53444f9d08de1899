import { expect, it } from 'vitest';
import { bindMarks } from '../../../../core/base/text/bindMarks.ts';

const nbsp = '\u00a0';

it('binds the spaces that French sets beside its high marks', () => {
  expect(bindMarks('Tube « plein » : long ; court ? oui !')).toBe(
    `Tube «${nbsp}plein${nbsp}»${nbsp}: long${nbsp}; court${nbsp}? oui${nbsp}!`,
  );
});

it('leaves other languages and other spaces as they are', () => {
  for (const text of ['From 3.10 m: a, b; c', 'De 3,10 m a 4 m: «uma» peça', ''])
    expect(bindMarks(text)).toBe(text);
});
