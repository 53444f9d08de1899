import { ok, type Result } from '../../base/result.ts';
import { readRecord } from '../../record/read.ts';
import { currentVersion } from '../../record/schema.ts';
import { troublePhrase } from '../../record/trouble.ts';
import type { GivenFile, Incoming, IncomingWell } from '../incoming.ts';
import { decode } from '../tables/decode.ts';
import { reason, type Reason } from '../reasons/reason.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';
import { jsonParts, type JsonPart } from './places.ts';

interface Part {
  readonly well?: IncomingWell;
  readonly troubles: readonly TableTrouble[];
}

/** Objects without this key are of another format, as GeoJSON is. */
const mark = /"schemaVersion"\s*:/;

/** Whether a file holds records as the archive writes them. */
export function holdsRecords({ bytes }: GivenFile): boolean {
  const text = decode(bytes).text;
  return /^\s*[[{]/.test(text) && mark.test(text);
}

/** A record stands alone, or within what the archive says of its revision. */
function recordIn(json: unknown): unknown {
  const { schemaVersion, record } = json as Record<string, unknown>;
  return schemaVersion === undefined && record !== undefined ? record : json;
}

const tooNew = (version: number) => reason('tooNew', { version, known: currentVersion });

function readPart(name: string, { text, line }: JsonPart): Part {
  const place = { file: name, line, column: '', kept: false };
  const trouble = (column: string, kept: boolean, says: Reason): TableTrouble => ({
    ...{ ...place, column, kept },
    ...told(says),
  });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { troubles: [trouble('', false, reason('brokenJson'))] };
  }
  const reading = readRecord(recordIn(json));
  if (reading.kind === 'tooNew') return { troubles: [trouble('', false, tooNew(reading.version))] };
  const kept = reading.kind === 'ok';
  const troubles = reading.troubles.map((one) => {
    const says = { phrase: troublePhrase(one) };
    return trouble(one.path, kept, reason(kept ? 'restComes' : 'ofRecord', { says }));
  });
  if (reading.kind === 'failed') return { troubles };
  return { well: { record: reading.record, file: name, line }, troubles };
}

/**
 * Records of the archive's own form: one, an array of them, or one on each line. What cannot be
 * read of a record is left out of it and told by the line on which the record begins.
 */
export function readJson({ name, bytes }: GivenFile): Result<Incoming> {
  const parts = jsonParts(decode(bytes).text).map((part) => readPart(name, part));
  return ok({
    wells: parts.flatMap(({ well }) => well ?? []),
    troubles: parts.flatMap(({ troubles }) => troubles),
  });
}
