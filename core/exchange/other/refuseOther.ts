import { refused, type Result } from '../../base/result.ts';
import type { GivenFile } from '../incoming.ts';
import { tablesInJson } from '../json/tablesInJson.ts';
import { decode } from '../tables/decode.ts';

/** Whether a file is XML or JSON that no other reader took and that holds no tables. */
export function holdsMarkup(file: GivenFile): boolean {
  const start = decode(file.bytes.subarray(0, 1024)).text;
  return /^\s*(<[?!a-z]|\{|\[\s*[{[\]])/i.test(start) && tablesInJson(file).length === 0;
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
    `${name} is JSON of a kind that is not read. Read are the archive's own records, GeoJSON and ` +
      'lists of flat rows; write it as lists or as tables (CSV, XLSX) and say what their columns mean.',
  );
}
