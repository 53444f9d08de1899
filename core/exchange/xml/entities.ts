/** What an entity may stand for, letters; links of vocabularies are shorter. */
const longestText = 500;
/** Times that entities may be named in a document. */
const mostNamed = 100_000;

const documentType = /<!DOCTYPE\s+[\w:.-]+\s*(?:\[([^\]]*)\])?\s*>/i;
const declaration = /<!ENTITY\s+([\w.-]+)\s+(?:"([^"&%<]*)"|'([^'&%<]*)')\s*>/g;

/** The texts that a document type names; undefined where anything else stands in it. */
function textsIn(inside: string): ReadonlyMap<string, string> | undefined {
  const rest = inside
    .replace(/<!--[^]*?-->/g, '')
    .replace(declaration, '')
    .trim();
  if (rest !== '') return undefined;
  const found = [...inside.matchAll(declaration)];
  const texts = new Map(found.map(([, name, double, single]) => [name!, double ?? single ?? '']));
  return [...texts.values()].every(({ length }) => length <= longestText) ? texts : undefined;
}

/** Lines stay where they were, so that troubles name those of the file. */
const blank = (text: string) => text.replace(/[^\n]/g, ' ');

/**
 * A document without its document type, the texts that this names put in their places. A text must
 * name no other and hold no markup, so that nothing grows or is fetched. Undefined where the
 * document type does anything else. Elements and lines stay as they are.
 */
export function withoutEntities(text: string): string | undefined {
  if (!/<!DOCTYPE/i.test(text)) return text;
  const found = documentType.exec(text);
  const texts = found ? textsIn(found[1] ?? '') : undefined;
  if (!found || !texts) return undefined;
  const plain = text.replace(found[0], blank(found[0]));
  if (/<!DOCTYPE/i.test(plain) || plain.split('&').length > mostNamed) return undefined;
  return plain.replace(/&([\w.-]+);/g, (whole, name: string) => texts.get(name) ?? whole);
}
