import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { ok, refused, type Result } from '../../base/result.ts';
import { withoutEntities } from './entities.ts';

/** An element of an XML document, its name without its prefix. */
export interface XmlElement {
  readonly name: string;
  /** By name without prefix. */
  readonly attributes: Readonly<Record<string, string>>;
  /** Its own text, blanks at the ends left away. */
  readonly text: string;
  readonly children: readonly XmlElement[];
  /** Line of the file on which it begins, from 1. */
  readonly line: number;
}

const attributesKey = ':@';
const textKey = '#text';

type Parsed = Readonly<Record<string, unknown>>;

/** Entities stay as they stand; those that a file may define are taken out before (entities.ts). */
const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: '',
  removeNSPrefix: true,
  processEntities: false,
  parseTagValue: false,
  parseAttributeValue: false,
  trimValues: true,
  captureMetaData: true,
  ignoreDeclaration: true,
  ignorePiTags: true,
});

const metaData = XMLParser.getMetaDataSymbol() as symbol;

/** The five entities of XML 1.0, section 4.6, and numbered characters; nothing else. */
const named: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};

function character(code: string): string | undefined {
  const value = code.startsWith('x') ? parseInt(code.slice(1), 16) : parseInt(code, 10);
  return value > 0 && value <= 0x10ffff ? String.fromCodePoint(value) : undefined;
}

function plain(text: string): string {
  return text.replace(/&(#?)([\w]+);/g, (whole, number: string, name: string) => {
    return (number === '' ? named[name] : character(name)) ?? whole;
  });
}

/** Tells the line of a place in the text. */
function lineFinder(text: string): (at: number) => number {
  const ends: number[] = [];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) ends.push(at);
  return (at) => {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (ends[middle]! < at) low = middle + 1;
      else high = middle;
    }
    return low + 1;
  };
}

function elementOf(node: Parsed, lineAt: (at: number) => number): XmlElement {
  const name = Object.keys(node).find((key) => key !== attributesKey)!;
  const inside = node[name] as readonly Parsed[];
  const given = (node[attributesKey] ?? {}) as Readonly<Record<string, string>>;
  const { startIndex = 0 } = ((node as Record<symbol, unknown>)[metaData] ?? {}) as {
    startIndex?: number;
  };
  const texts = inside.flatMap((one) => (textKey in one ? [String(one[textKey])] : []));
  return {
    name,
    attributes: Object.fromEntries(Object.entries(given).map(([key, text]) => [key, plain(text)])),
    text: plain(texts.join(' ').trim()),
    children: inside.filter((one) => !(textKey in one)).map((one) => elementOf(one, lineAt)),
    line: lineAt(startIndex),
  };
}

/**
 * The root of an XML document. Refused with `xmlBroken` where it is not well-formed, and with
 * `xmlDoctype` where it brings a document type that does more than name short texts: it could make
 * the program read other files, or grow without end.
 */
export function readXml(file: string, given: string): Result<XmlElement> {
  const text = withoutEntities(given);
  if (text === undefined)
    return refused(
      'xmlDoctype',
      `${file} brings a document type of its own (DOCTYPE) that does more than name short texts, ` +
        'which is not read. Ask for the file without it.',
    );
  const valid = XMLValidator.validate(text);
  if (valid !== true)
    return refused(
      'xmlBroken',
      `${file} is not whole XML: line ${valid.err.line}: ${valid.err.msg} Ask for it again.`,
    );
  const [root] = parser.parse(text) as readonly Parsed[];
  return ok(elementOf(root!, lineFinder(text)));
}

/** Elements directly inside. */
export function childrenOf(element: XmlElement | undefined, name: string): readonly XmlElement[] {
  return element?.children.filter((one) => one.name === name) ?? [];
}

/** The first element at the end of a way of names, each inside the one before. */
export function at(element: XmlElement | undefined, ...names: string[]): XmlElement | undefined {
  return names.reduce<XmlElement | undefined>(
    (inside, name) => inside?.children.find((one) => one.name === name),
    element,
  );
}

/** All elements of a name at any depth, in the order of the document. */
export function within(element: XmlElement, name: string): XmlElement[] {
  return element.children.flatMap((one) => [
    ...(one.name === name ? [one] : []),
    ...within(one, name),
  ]);
}
