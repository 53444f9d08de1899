import { describe, expect, it } from 'vitest';
import { languages } from '../../../core/base/language.ts';
import { troublesOf } from '../../../core/record/consistency.ts';
import { readRecord } from '../../../core/record/read.ts';
import { currentVersion } from '../../../core/record/schema.ts';
import { sayTrouble, type Trouble } from '../../../core/record/trouble.ts';

/** The troubles of a document, as they travel to the page. */
function troublesIn(document: unknown): readonly Trouble[] {
  const reading = readRecord(document);
  if (reading.kind === 'tooNew') throw new Error(reading.sentence);
  const troubles = reading.kind === 'ok' ? troublesOf(reading) : reading.troubles;
  return JSON.parse(JSON.stringify(troubles)) as Trouble[];
}

const written = (chapters: object) => ({ schemaVersion: currentVersion, ...chapters });
const nbsp = '\u00a0';

describe('a trouble', () => {
  it.each<[unknown, string, string]>([
    [
      written({ log: [{ from: 0 }] }),
      `log[0].to${nbsp}: rien n’est écrit ici${nbsp}; écrire des mètres sous le sol, par exemple 12,5`,
      'log[0].to: nada está escrito aqui; escrever metros abaixo do solo, por exemplo 12,5',
    ],
    [
      written({ log: [{ from: 8, to: 7.5 }] }),
      `log[0].to${nbsp}: 7,5 est plus haut que log[0].from 8,0`,
      'log[0].to: 7,5 fica acima de log[0].from 8,0',
    ],
    [
      written({ log: [{ from: 0, to: 1, material: 'sannd' }] }),
      `log[0].material${nbsp}: "sannd" n’est pas un mot connu${nbsp}; est-ce «${nbsp}sand${nbsp}»${nbsp}?`,
      'log[0].material: "sannd" não é uma palavra conhecida; será «sand»?',
    ],
    [
      written({ bore: { depthReached: [1, 2] } }),
      `bore.depthReached${nbsp}: une liste de 2 n’est pas un nombre${nbsp}; écrire des mètres sous le sol, par exemple 12,5`,
      'bore.depthReached: uma lista de 2 não é um número; escrever metros abaixo do solo, por exemplo 12,5',
    ],
    [
      [],
      `fiche${nbsp}: une liste de 0 n’est pas une fiche${nbsp}; donner un groupe de champs, comme { "log": [] }`,
      'ficha: uma lista de 0 não é uma ficha; dar um grupo de campos, como { "log": [] }',
    ],
  ])('of %j is said in French and Portuguese', (document, french, portuguese) => {
    const [trouble] = troublesIn(document);
    expect(sayTrouble(trouble!, 'fr')).toBe(french);
    expect(sayTrouble(trouble!, 'pt')).toBe(portuguese);
  });

  it('is said in English as its sentence has it, and leaves no place open anywhere', () => {
    const all = troublesIn(
      written({
        log: [null, { from: 'deep', to: 1, lens: 'x' }, { from: 3, to: 2 }],
        site: { latitude: 99, users: 2.5, households: -1 },
        annulus: [{ from: 0, to: 1, fill: 'gravel', around: 0, insideHole: true }],
        bore: { startedOn: '2026-02-30', methood: 'percussion' },
        identity: { id: 'x', state: 7 },
        strikes: [{ depth: 4, at: 'noon' }],
        marks: [{ role: 'client', strokes: [[[1]]] }],
      }),
    );
    expect(all.length).toBeGreaterThan(10);
    for (const trouble of all) {
      expect(sayTrouble(trouble, 'en')).toBe(trouble.sentence);
      for (const language of languages)
        expect(sayTrouble(trouble, language)).not.toMatch(/\{\w+\}|undefined|\[object/);
    }
  });

  it('names the other field by its place in the document, in every language', () => {
    const all = troublesIn(written({ annulus: [{ from: 0 }, { from: 8, to: 7, fill: 'open' }] }));
    const reversed = all.find(({ code }) => code === 'above')!;
    for (const language of languages)
      expect(sayTrouble(reversed, language)).toContain('annulus[1].from');
  });
});
