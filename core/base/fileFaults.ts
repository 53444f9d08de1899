import { ok, refused, type Result } from './result.ts';

/** A fault of a file that a person wrote. */
export interface FileFault {
  /** Where, as the file's keys name it; empty for the file as a whole. */
  readonly place: string;
  /** What to write instead. */
  readonly says: string;
}

/** A refusal of a file for all its faults, each with its place. `opening` is a sentence. */
export function refusedFor(
  code: string,
  opening: string,
  faults: readonly FileFault[],
): Result<never> {
  const said = faults.map(({ place, says }) => (place === '' ? says : `${place}: ${says}`));
  const places = faults.map(({ place }) => place).filter((place) => place !== '');
  return refused(code, `${opening} ${said.join('. ')}.`, places);
}

/** What a text of JSON holds, with or without a byte order mark; else the refusal. */
export function parsedJson(text: string, otherwise: Result<never>): Result<unknown> {
  try {
    return ok(JSON.parse(text.replace(/^\uFEFF/, '')) as unknown);
  } catch {
    return otherwise;
  }
}
