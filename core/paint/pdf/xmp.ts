import { paperNamespace, paperStatements, type PaperStatement } from './paperNamespace.ts';
import { stated } from './properties.ts';
import type { About } from './sheet.ts';

/** What the packet says besides what the drawing says of itself. */
export interface PacketFacts {
  /** Programs, as the Info dictionary names them. */
  readonly creator: string;
  readonly producer: string;
  /**
   * Part of ISO 19005 that the document is made to follow, with conformance B: 3 where a file is
   * attached. Absent where something in the document is against it.
   */
  readonly part?: 2 | 3;
}

const { uri, prefix } = paperNamespace;

/** Namespaces of the XMP specification (ISO 16684-1) and of ISO 19005. */
const namespaces: Readonly<Record<string, string>> = {
  dc: 'http://purl.org/dc/elements/1.1/',
  xmp: 'http://ns.adobe.com/xap/1.0/',
  xmpMM: 'http://ns.adobe.com/xap/1.0/mm/',
  pdf: 'http://ns.adobe.com/pdf/1.3/',
  pdfaid: 'http://www.aiim.org/pdfa/ns/id/',
  pdfaExtension: 'http://www.aiim.org/pdfa/ns/extension/',
  pdfaSchema: 'http://www.aiim.org/pdfa/ns/schema#',
  pdfaProperty: 'http://www.aiim.org/pdfa/ns/property#',
  [prefix]: uri,
};

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}

/** A statement with what it holds; nothing where there is nothing to say. */
function element(name: string, content: string | undefined): string {
  return content ? `<${name}>${content}</${name}>` : '';
}

const plain = (text: string) => escaped(stated(text));

/** A text by language, of which there is the usual one alone. */
function byLanguage(text: string): string | undefined {
  const said = plain(text);
  return said && `<rdf:Alt><rdf:li xml:lang="x-default">${said}</rdf:li></rdf:Alt>`;
}

function listed(kind: 'Seq' | 'Bag', text: string): string | undefined {
  const said = plain(text);
  return said && `<rdf:${kind}><rdf:li>${said}</rdf:li></rdf:${kind}>`;
}

/** XMP's way of writing a moment, in universal time like the Info dictionary's. */
const xmpMoment = (madeAt: string) => `${new Date(madeAt).toISOString().slice(0, 19)}Z`;

const uuid = (id: string) =>
  `uuid:${id.toLowerCase().replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')}`;

function general({ title, author, subject, language, madeAt, paperId }: About): string {
  return [
    element('dc:format', 'application/pdf'),
    element('dc:title', byLanguage(title)),
    element('dc:creator', listed('Seq', author)),
    element('dc:description', byLanguage(subject)),
    element('dc:language', listed('Bag', language)),
    element('xmp:CreateDate', xmpMoment(madeAt)),
    element('xmp:MetadataDate', xmpMoment(madeAt)),
    element('xmpMM:DocumentID', uuid(paperId)),
    element('xmpMM:InstanceID', uuid(paperId)),
  ].join('');
}

function said(drawing: About, name: PaperStatement): string | undefined {
  const value = drawing[name];
  return value === undefined ? undefined : plain(String(value));
}

function ownStatements(drawing: About): string {
  return paperStatements
    .map(({ name }) => element(`${prefix}:${name}`, said(drawing, name)))
    .join('');
}

/** ISO 19005-2, 6.6.2.3: statements of one's own are described in the packet that makes them. */
function ownSchema(): string {
  const properties = paperStatements.map(
    ({ name, type, says }) =>
      '<rdf:li rdf:parseType="Resource">' +
      element('pdfaProperty:name', name) +
      element('pdfaProperty:valueType', type) +
      element('pdfaProperty:category', 'external') +
      element('pdfaProperty:description', says) +
      '</rdf:li>',
  );
  const schema =
    element('pdfaSchema:schema', 'Papers of a borehole') +
    element('pdfaSchema:namespaceURI', uri) +
    element('pdfaSchema:prefix', prefix) +
    element('pdfaSchema:property', element('rdf:Seq', properties.join('')));
  const only = `<rdf:Bag><rdf:li rdf:parseType="Resource">${schema}</rdf:li></rdf:Bag>`;
  return element('pdfaExtension:schemas', only);
}

function followed(part: PacketFacts['part']): string {
  if (part === undefined) return '';
  return element('pdfaid:part', String(part)) + element('pdfaid:conformance', 'B');
}

/** Blanks after the packet, so that others can write into it in place (ISO 16684-1, 7.3.2). */
const room = `${' '.repeat(99)}\n`.repeat(8);

/** The XMP packet of a paper. It says what the Info dictionary says, and what the paper shows. */
export function xmpPacket(drawing: About, { creator, producer, part }: PacketFacts): string {
  const own = ownStatements(drawing);
  const content = [
    general(drawing),
    element('xmp:CreatorTool', plain(creator)),
    element('pdf:Producer', plain(producer)),
    followed(part),
    own && ownSchema() + own,
  ].join('');
  const names = Object.entries(namespaces).map(([name, address]) => ` xmlns:${name}="${address}"`);
  return [
    '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/">',
    '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    `<rdf:Description rdf:about=""${names.join('')}>${content}</rdf:Description>`,
    '</rdf:RDF>',
    '</x:xmpmeta>',
    `${room}<?xpacket end="w"?>`,
  ].join('\n');
}
