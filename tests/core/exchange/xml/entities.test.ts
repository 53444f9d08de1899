import { expect, test } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { readGwml } from '../../../../core/exchange/gwml/readGwml.ts';
import { withoutEntities } from '../../../../core/exchange/xml/entities.ts';

const typed = (inside: string, root = '<a>&m;</a>') => `<!DOCTYPE a [\n${inside}\n]>\n${root}`;

test('short texts that a document type names are put in, and lines stay where they were', () => {
  const plain = withoutEntities(typed(`<!-- units -->\n<!ENTITY m "metre">`));
  expect(plain?.trim()).toBe('<a>metre</a>');
  expect(plain?.split('\n')).toHaveLength(5);
  expect(withoutEntities('<!DOCTYPE a>\n<a>&amp;</a>')?.trim()).toBe('<a>&amp;</a>');
});

test.each([
  ['another file', '<!ENTITY m SYSTEM "file:///etc/passwd">'],
  ['an entity within an entity', '<!ENTITY n "x"><!ENTITY m "&n;&n;">'],
  ['a parameter entity', '<!ENTITY % p "x">'],
  ['markup', '<!ENTITY m "<b/>">'],
  ['elements of its own', '<!ELEMENT a (b)>'],
  ['a long text', `<!ENTITY m "${'x'.repeat(501)}">`],
])('a document type with %s is not taken', (_, inside) => {
  expect(withoutEntities(typed(inside))).toBeUndefined();
});

test('nor is one that names a file, or a text that is named without end', () => {
  expect(withoutEntities('<!DOCTYPE a SYSTEM "a.dtd"><a/>')).toBeUndefined();
  expect(withoutEntities(typed('<!ENTITY m "x">', '&m;'.repeat(100_001)))).toBeUndefined();
});

test('a well whose units are entities comes in, as an example of the standard has them', () => {
  const text = typed(
    '<!ENTITY meter "http://www.opengis.net/def/uom/UCUM/0/m">',
    `<GW_Well xmlns="http://www.opengis.net/gwml-well/2.2" id="W"><gwWellTotalLength><Quantity>
      <uom href="&meter;"/><value>11.58</value></Quantity></gwWellTotalLength></GW_Well>`,
  );
  const read = readGwml({ name: 'w.xml', bytes: bytesOf([text]) });
  expect(read).toMatchObject({ value: { wells: [{ record: { bore: { depthReached: 11.58 } } }] } });
});
