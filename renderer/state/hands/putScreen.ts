import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { Recut } from '../../../core/model/screen.ts';
import type { Desk } from '../desk.ts';
import { setAt } from '../edit.ts';

/** Carries texts that are only typed yet to where their line of the tally went. */
function retyped(typed: Desk['typed'], list: RecordPath, { origins }: Recut, lines: number) {
  const moved = (index: number) => (index < lines ? origins.indexOf(index) : origins.length);
  const entries = Object.entries(typed).map(([key, text]) => {
    if (!key.startsWith(`${list}[`)) return [key, text] as const;
    const rest = key.slice(list.length + 1);
    return [`${list}[${moved(Number.parseInt(rest, 10))}${rest.slice(rest.indexOf(']'))}`, text];
  });
  return Object.fromEntries(entries) as Desk['typed'];
}

/** The desk with a string's tally recut. What was typed beside it and not read yet stays. */
export function putScreen(desk: Desk, string: number, recut: Recut): Desk {
  const list = `strings[${string}].components`;
  const lines = desk.record.strings?.[string]?.components.length ?? 0;
  return {
    record: setAt(desk.record, list, recut.components),
    typed: retyped(desk.typed, list, recut, lines),
  };
}
