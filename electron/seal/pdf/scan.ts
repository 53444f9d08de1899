/** Where something stands in a text: from its first letter to behind its last. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A PDF's bytes do not follow its own grammar. */
export class Unparsed extends Error {}

const space = /[\0\t\n\f\r ]/;
const ends = /[\0\t\n\f\r ()<>[\]{}/%]/;

/** Behind white space and comments (ISO 32000-1, 7.2). */
export function skipSpace(text: string, from: number): number {
  let at = from;
  while (at < text.length)
    if (space.test(text[at]!)) at += 1;
    else if (text[at] === '%') while (at < text.length && !/[\r\n]/.test(text[at]!)) at += 1;
    else break;
  return at;
}

/** Behind what is neither white space nor a sign of the grammar; a name may be empty. */
function endOfName(text: string, from: number): number {
  let at = from;
  while (at < text.length && !ends.test(text[at]!)) at += 1;
  return at;
}

function endOfWord(text: string, from: number): number {
  const end = endOfName(text, from);
  if (end === from) throw new Unparsed();
  return end;
}

/** Brackets inside a string count, unless a backslash stands before them. */
function endOfString(text: string, from: number): number {
  let depth = 0;
  for (let at = from; at < text.length; at += 1)
    if (text[at] === '\\') at += 1;
    else if (text[at] === '(') depth += 1;
    else if (text[at] === ')' && --depth === 0) return at + 1;
  throw new Unparsed();
}

function endOfHex(text: string, from: number): number {
  const end = text.indexOf('>', from);
  if (end < 0) throw new Unparsed();
  return end + 1;
}

function endOfRow(text: string, from: number, closing: ']' | '>>'): number {
  let at = skipSpace(text, from);
  while (!text.startsWith(closing, at)) at = skipSpace(text, endOfValue(text, at));
  return at + closing.length;
}

/** `12 0 R` is one value. */
function endOfNumberOrReference(text: string, from: number): number {
  const reference = /\d+[\0\t\n\f\r ]+\d+[\0\t\n\f\r ]+R(?![^\0\t\n\f\r ()<>[\]{}/%])/y;
  reference.lastIndex = from;
  return reference.test(text) ? reference.lastIndex : endOfWord(text, from);
}

/** Behind the value that starts at a place (ISO 32000-1, 7.3). Throws `Unparsed`. */
export function endOfValue(text: string, from: number): number {
  if (from >= text.length) throw new Unparsed();
  if (text.startsWith('<<', from)) return endOfRow(text, from + 2, '>>');
  switch (text[from]) {
    case '<':
      return endOfHex(text, from);
    case '[':
      return endOfRow(text, from + 1, ']');
    case '(':
      return endOfString(text, from);
    case '/':
      return endOfName(text, from + 1);
    default:
      return endOfNumberOrReference(text, from);
  }
}

/** Where the values of a dictionary stand, by key without its slash. Throws `Unparsed`. */
export function entriesOf(text: string, from: number): ReadonlyMap<string, Span> {
  if (!text.startsWith('<<', from)) throw new Unparsed();
  const entries = new Map<string, Span>();
  let at = skipSpace(text, from + 2);
  while (!text.startsWith('>>', at)) {
    if (text[at] !== '/') throw new Unparsed();
    const keyEnd = endOfValue(text, at);
    const start = skipSpace(text, keyEnd);
    const end = endOfValue(text, start);
    const key = text.slice(at + 1, keyEnd);
    // A key that stands twice may be read one way here and another way elsewhere.
    if (entries.has(key)) throw new Unparsed();
    entries.set(key, { start, end });
    at = skipSpace(text, end);
  }
  return entries;
}

/** Where the members of an array stand. Throws `Unparsed`. */
export function membersOf(text: string, from: number): readonly Span[] {
  if (text[from] !== '[') throw new Unparsed();
  const members: Span[] = [];
  let at = skipSpace(text, from + 1);
  while (text[at] !== ']') {
    const end = endOfValue(text, at);
    members.push({ start: at, end });
    at = skipSpace(text, end);
  }
  return members;
}
