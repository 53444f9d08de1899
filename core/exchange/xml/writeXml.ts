/** Content of an element: text that is escaped, or elements that are written already. */
export type Content = string | readonly Markup[];

/** XML as it is written; only what this file makes. */
export interface Markup {
  readonly markup: string;
}

type Attributes = Readonly<Record<string, string | undefined>>;

/** Characters that XML 1.0 does not have at all (section 2.2), halves of a pair among them. */
const notXml =
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text as XML can hold it: what it cannot becomes a blank. */
export function xmlText(text: string): string {
  return text.replace(notXml, ' ');
}

function escaped(text: string): string {
  return xmlText(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll('\r', '&#13;');
}

const inAttribute = (text: string) =>
  escaped(text).replaceAll('\n', '&#10;').replaceAll('\t', '&#9;');

function tag(name: string, attributes: Attributes): string {
  const written = Object.entries(attributes).flatMap(([key, text]) =>
    text === undefined ? [] : [` ${key}="${inAttribute(text)}"`],
  );
  return `${name}${written.join('')}`;
}

/** An element; attributes without a value are left away. */
export function element(name: string, attributes: Attributes, content: Content = []): Markup {
  const inside =
    typeof content === 'string' ? escaped(content) : content.map(({ markup }) => markup).join('');
  const open = tag(name, attributes);
  return { markup: inside === '' ? `<${open}/>` : `<${open}>${inside}</${name}>` };
}

/** The opening tag of an element that is closed elsewhere. */
export function opening(name: string, attributes: Attributes): string {
  return `<${tag(name, attributes)}>`;
}
