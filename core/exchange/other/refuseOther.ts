import { refused, type Result } from '../../base/result.ts';
import type { GivenFile } from '../incoming.ts';
import { decode } from '../tables/decode.ts';

/** Whether a file is XML or JSON, which no other reader took. */
export function holdsMarkup({ bytes }: GivenFile): boolean {
  return /^\s*(<[?!a-z]|\{|\[\s*[{[\]])/i.test(decode(bytes.subarray(0, 1024)).text);
}

const rootOf = (text: string) =>
  /<([\w:.-]+)[\s/>]/.exec(text.replace(/<\?[^]*?\?>|<!--[^]*?-->/g, ''))?.[1];

/** Says of XML and JSON of other kinds what they are, and what is read instead. */
export function refuseOther({ name, bytes }: GivenFile): Result<never> {
  const { text } = decode(bytes.subarray(0, 65536));
  if (text.trimStart().startsWith('<'))
    return refused(
      'otherXml',
      `${name} is XML of a kind that is not read (it begins with "${rootOf(text) ?? '?'}"). Read are ` +
        'GroundWaterML 2 and documents of the Flemish subsoil database; ask for one of these, or for tables.',
    );
  return refused(
    'otherJson',
    `${name} is JSON of a kind that is not read. Read are the archive's own records and GeoJSON; ` +
      'write its lists as tables (CSV, XLSX) and say what their columns mean.',
  );
}
