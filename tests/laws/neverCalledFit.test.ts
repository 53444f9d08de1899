import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const top = path.resolve(import.meta.dirname, '../..');

/** Every file that may hold words of the page, of sheets, of findings or of practices. */
const files = ['core', 'renderer', 'electron', 'assets/pictograms'].flatMap((folder) =>
  readdirSync(path.join(top, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|svelte|json|html)$/.test(name) && !/^make\b/.test(name))
    .map((name) => path.posix.join(folder, name.split(path.sep).join('/'))),
);

/** Texts in a script, comments left out. */
function inScript(script: string): string[] {
  const texts: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node)) texts.push(node.text);
    else if (ts.isTemplateExpression(node))
      texts.push(
        [node.head, ...node.templateSpans.map(({ literal }) => literal)]
          .map(({ text }) => text)
          .join('…'),
      );
    ts.forEachChild(node, walk);
  };
  walk(ts.createSourceFile('one.ts', script, ts.ScriptTarget.Latest, false, ts.ScriptKind.TS));
  return texts;
}

/** What stands between the tags of a page, and in their scripts. */
function inMarkup(markup: string): string[] {
  const scripts = [...markup.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(([, one]) => one!);
  const rest = markup.replace(/<(script|style)[^>]*>[\s\S]*?<\/\1>|<!--[\s\S]*?-->/g, '');
  return [...scripts.flatMap(inScript), ...rest.split('\n')];
}

function textsOf(file: string): string[] {
  const source = readFileSync(path.join(top, file), 'utf8');
  if (file.endsWith('.ts')) return inScript(source);
  if (file.endsWith('.json')) return [...source.matchAll(/"(?:[^"\\]|\\.)*"/g)].map(([one]) => one);
  return inMarkup(source);
}

/** Words that would call water fit to drink, in English, French and Portuguese. */
const fit =
  /\b(?:potab|drinkab|wholesome|fit (?:to drink|for drinking)|buvable|salubre|beb[íi]ve|pot[áa]ve[il])|propre à la consommation|pr[óo]pri[ao] para (?:beber|consumo)|sans (?:danger|risque)/i;
/** The same words are also said of other things: those are taken out before it is looked. */
const safe = /\b(?:safe|safely|safest|sûre?s?|saine?s?|segur[ao]s?)(?!\p{L})/iu;
const ofOtherThings =
  /safe rate|safe yield|saved is safe|le plus sûr|o mais seguro|le disque est sain/gi;

/** The sentences that say what the program does not say. */
const denied = [
  'Nothing here says that the water is safe.',
  'Rien ici ne dit que l’eau est potable.',
  'Nada aqui diz que a água é potável.',
  'No sheet of this program declares water safe.',
  'Aucune feuille de ce programme ne déclare une eau saine.',
  'Nenhuma folha deste programa declara uma água segura.',
];

/** A text without those sentences, the names of values, and what is said of other things. */
const bare = (text: string) =>
  denied
    .reduce((rest, sentence) => rest.replace(sentence, ''), text)
    .replace(/\{[^}]*\}/g, '')
    .replace(ofOtherThings, '');
/** A key or a code is one word; a sentence has several. */
const isSentence = (text: string) => /\S\s\S/.test(text.trim());

describe('no text of the program', () => {
  const texts = files.flatMap((file) => textsOf(file).map((text) => ({ file, text })));
  const among = (wrong: (text: string) => boolean) =>
    texts
      .filter(({ text }) => wrong(bare(text)))
      .map(({ file, text }) => `${file}: ${text.trim()}`);

  it('says that it is not said in other sentences than these', () => {
    for (const sentence of denied)
      expect(
        texts.some(({ text }) => text.includes(sentence)),
        sentence,
      ).toBe(true);
  });

  it('calls water fit to drink, in any language', () => {
    expect(texts.length).toBeGreaterThan(5000);
    expect(among((text) => fit.test(text))).toEqual([]);
  });

  it('calls anything of the water safe but a rate of pumping', () => {
    expect(among((text) => isSentence(text) && safe.test(text))).toEqual([]);
  });
});
