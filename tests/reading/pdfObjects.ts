import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** A value as qpdf writes it in JSON: names begin with `/`, texts with `u:`, bytes with `b:`. */
export type PdfValue =
  null | boolean | number | string | readonly PdfValue[] | { readonly [key: string]: PdfValue };

export type PdfDictionary = Readonly<Record<string, PdfValue>>;

export interface PdfObject {
  /** As in `12 0 R`. */
  readonly name: string;
  readonly value: PdfValue;
  /** Without its filters; of a stream only. */
  readonly stream?: Buffer;
}

export interface PdfObjects {
  readonly trailer: PdfDictionary;
  readonly all: readonly PdfObject[];
  /** The value itself, or what a name as `12 0 R` leads to. */
  at(value: PdfValue | undefined): PdfValue | undefined;
  stream(value: PdfValue | undefined): Buffer;
}

interface Held {
  readonly value?: PdfValue;
  readonly stream?: { readonly dict: PdfDictionary; readonly data?: string };
}

/** qpdf copies numbers as `6.`, which are no JSON. */
function repaired(json: string): string {
  return json.replace(/^(\s*(?:"[^"]*": )?-?\d+)\.(?=,?$)/gm, '$1');
}

function readJson(pdf: Uint8Array): Readonly<Record<string, Held>> {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-qpdf-'));
  try {
    const file = path.join(folder, 'paper.pdf');
    writeFileSync(file, pdf);
    const options = ['--json=2', '--json-stream-data=inline', '--decode-level=generalized', file];
    const json = execFileSync('qpdf', options, { encoding: 'utf8', maxBuffer: 1e9 });
    return (JSON.parse(repaired(json)) as { qpdf: [object, Record<string, Held>] }).qpdf[1];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** All objects of a PDF as qpdf understands them. */
export function pdfObjects(pdf: Uint8Array): PdfObjects {
  const held = readJson(pdf);
  const named = new Map<string, PdfObject>();
  for (const [key, { value, stream }] of Object.entries(held)) {
    const name = key.replace(/^obj:/, '');
    const data = stream && { stream: Buffer.from(stream.data ?? '', 'base64') };
    named.set(name, { name, value: value ?? stream?.dict ?? null, ...data });
  }
  const at = (value: PdfValue | undefined) =>
    typeof value === 'string' && named.has(value) ? named.get(value)!.value : value;
  return {
    trailer: named.get('trailer')!.value as PdfDictionary,
    all: [...named.values()].filter(({ name }) => name !== 'trailer'),
    at,
    stream: (value) => named.get(String(value))!.stream!,
  };
}

/** Every dictionary within a value, itself among them. */
export function* dictionariesIn(value: PdfValue): Generator<PdfDictionary> {
  if (value === null || typeof value !== 'object') return;
  if (!Array.isArray(value)) yield value as PdfDictionary;
  for (const one of Object.values(value)) yield* dictionariesIn(one as PdfValue);
}
