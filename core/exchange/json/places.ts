/** A value at the top of a text of JSON, or one of the array there, with its place. */
export interface JsonPart {
  readonly text: string;
  /** From 1. */
  readonly line: number;
}

const opens = '{[';
const closes = '}]';

/** Where the string that opens at a place ends; its closing quotation mark, or the end. */
function endOfString(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    if (text[at] === '\\') at++;
    else if (text[at] === '"') return at;
  }
  return text.length;
}

/** Objects that stand at a depth of brackets: 0 for JSON lines, 1 within one array. */
function objectsAt(text: string, wanted: number): JsonPart[] {
  const parts: JsonPart[] = [];
  let [depth, line, start, startLine] = [0, 1, 0, 1];
  for (let at = 0; at < text.length; at++) {
    const letter = text[at]!;
    if (letter === '\n') line++;
    else if (letter === '"') at = endOfString(text, at);
    else if (opens.includes(letter)) {
      if (depth === wanted) [start, startLine] = [at, line];
      depth++;
    } else if (closes.includes(letter)) {
      depth--;
      if (depth === wanted) parts.push({ text: text.slice(start, at + 1), line: startLine });
    }
  }
  // What is left open is for the parser to complain about.
  if (depth > wanted) parts.push({ text: text.slice(start), line: startLine });
  return parts;
}

/**
 * The objects of a text that holds one, several one after the other (JSON lines) or an array of
 * them, each with its line. Whether each is JSON is for the parser to say.
 */
export function jsonParts(text: string): JsonPart[] {
  return objectsAt(text, text.trimStart().startsWith('[') ? 1 : 0);
}
