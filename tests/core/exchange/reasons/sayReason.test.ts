import { expect, it } from 'vitest';
import { reasonsOf, sayReason } from '../../../../core/exchange/reasons/sayReason.ts';
import type { ReasonCode } from '../../../../core/exchange/reasons/reason.ts';
import { readJson } from '../../../../core/exchange/json/readJson.ts';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { reason } from '../../../../core/exchange/reasons/reason.ts';
import { sayTableTrouble } from '../../../../core/exchange/tables/trouble.ts';

const placesIn = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

it.each(['fr', 'pt'] as const)(
  'the reasons in %s name the same values as in English',
  (language) => {
    const [english, other] = [reasonsOf('en'), reasonsOf(language)];
    for (const code of Object.keys(english) as ReasonCode[]) {
      expect(placesIn(other[code]), code).toEqual(placesIn(english[code]));
      expect(other[code].replace(/\{\w+\}/g, ''), code).not.toMatch(
        /\b(the|is|row|file|well|not)\b/,
      );
    }
  },
);

it('a reason within a reason and its figures are said in the language', () => {
  const says = reason('upsideDown', { from: 2.5, to: 1 });
  expect(sayReason(reason('leftOut', { says }), 'fr').replaceAll('\u00a0', ' ')).toBe(
    'Le bas, 1 m, n’est pas plus profond que le haut, 2,5 m. ' +
      'Corriger et relire le fichier ; la ligne a été laissée de côté.',
  );
});

it('what the rules of the record say is said in their own words of the language', () => {
  const bytes = bytesOf(['{"schemaVersion": 1, "bore": {"depthReached": "deep"}}']);
  const read = readJson({ name: 'a.json', bytes });
  const [trouble] = read.ok ? read.value.troubles : [];
  expect(trouble!.sentence).toMatch(/is not a number.*; the rest of the record comes in\.$/);
  expect(sayTableTrouble(trouble!, 'pt')).toMatch(/não é um número.*o resto da ficha entra\.$/);
});

it('a refused file is said by whoever has words for the refusal, else in its own sentence', () => {
  const refusal = { code: 'xmlBroken', sentence: 'Broken.' };
  const says = reason('fileRefused', { says: { refusal } });
  expect(sayReason(says, 'fr')).toBe('Broken.');
  expect(sayReason(says, 'fr', ({ code }) => `mot pour ${code}`)).toBe('mot pour xmlBroken');
});
