import type { Language } from '../../base/language.ts';
import { bindMarks } from '../../base/text/bindMarks.ts';
import type { LoggerTrouble } from './readLogger.ts';

type Words = Readonly<Record<LoggerTrouble['code'], string>>;

const words: Readonly<Record<Language, Words>> = {
  en: {
    noColumn: 'The file has no heading with the columns {column}.',
    notTime: 'Line {line}, {column}: “{text}” is not a time; the row was left out.',
    notNumber: 'Line {line}, {column}: “{text}” is not a number; the row was left out.',
    broken: 'Line {line}: a quotation mark is never closed; the rest of the file was not read.',
  },
  fr: {
    noColumn: 'Le fichier n’a pas de ligne d’en-tête avec les colonnes {column}.',
    notTime: 'Ligne {line}, {column} : « {text} » n’est pas un temps ; la ligne a été laissée.',
    notNumber: 'Ligne {line}, {column} : « {text} » n’est pas un nombre ; la ligne a été laissée.',
    broken: 'Ligne {line} : un guillemet n’est jamais fermé ; le reste du fichier n’a pas été lu.',
  },
  pt: {
    noColumn: 'O ficheiro não tem cabeçalho com as colunas {column}.',
    notTime: 'Linha {line}, {column}: “{text}” não é um tempo; a linha ficou de fora.',
    notNumber: 'Linha {line}, {column}: “{text}” não é um número; a linha ficou de fora.',
    broken: 'Linha {line}: umas aspas nunca fecham; o resto do ficheiro não foi lido.',
  },
};

/** What a logger's file could not be read for, a sentence. */
export function sayLoggerTrouble(trouble: LoggerTrouble, language: Language): string {
  const values: Readonly<Record<string, string | number>> = { ...trouble };
  return bindMarks(words[language][trouble.code]).replace(/\{(\w+)\}/g, (place, name: string) =>
    String(values[name] ?? place),
  );
}
