import type { OutgoingWell } from '../outgoing.ts';
import type { WellWriter, Writing } from '../writer.ts';

/** A record as it is, with what the archive says of it around it. */
function textOf({ record, revision, changedAt }: OutgoingWell): string {
  return JSON.stringify({ revision, changedAt, record });
}

/** One record on each line: a file can be cut, sorted and read on by lines. Loses nothing. */
export function jsonLinesWriter({ name }: Writing): WellWriter {
  const part = 'wells';
  return {
    well: (one) => ({ added: [{ part, content: `${textOf(one)}\n` }], losses: [] }),
    end: () => ({ added: [], files: [{ name: `${name}.jsonl`, parts: [part] }] }),
  };
}

/** All records in one array. Loses nothing. */
export function jsonWriter({ name }: Writing): WellWriter {
  let opening = '[\n';
  return {
    well(one) {
      const content = `${opening}${textOf(one)}`;
      opening = ',\n';
      return { added: [{ part: 'wells', content }], losses: [] };
    },
    end: () => ({
      added: [{ part: 'end', content: opening === '[\n' ? '[]\n' : '\n]\n' }],
      files: [{ name: `${name}.json`, parts: ['wells', 'end'] }],
    }),
  };
}
