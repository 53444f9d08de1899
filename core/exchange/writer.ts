import { bytesOf } from './encode.ts';
import type { Loss, MadeFile, Outgoing, OutgoingWell } from './outgoing.ts';

/** Text or bytes that go to the end of a part. */
export interface Added {
  readonly part: string;
  readonly content: string | Uint8Array;
}

export interface WrittenWell {
  readonly added: readonly Added[];
  readonly losses: readonly Loss[];
}

/** A file, made of parts in this order. Parts that nothing was added to are empty. */
export interface PartedFile {
  readonly name: string;
  readonly parts: readonly string[];
}

export interface Ended {
  readonly added: readonly Added[];
  readonly files: readonly PartedFile[];
}

/**
 * Writes wells one after the other, so that an archive need not be in memory: what a well adds
 * goes to parts, and the parts make the files at the end. A writer is used once.
 */
export interface WellWriter {
  readonly well: (one: OutgoingWell) => WrittenWell;
  /** What is known last, and of what the files are made. */
  readonly end: () => Ended | Promise<Ended>;
}

/** What a file says of itself. Handed in, so that the same wells give the same bytes. */
export interface Writing {
  /** ISO 8601 moment of the writing. */
  readonly madeAt: string;
  /** Name of the files, without their ending. */
  readonly name: string;
}

/** All wells at once, for those that fit into memory. */
export async function writeWells(
  writer: WellWriter,
  wells: readonly OutgoingWell[],
): Promise<Outgoing> {
  const parts = new Map<string, (string | Uint8Array)[]>();
  const add = (added: readonly Added[]) => {
    for (const { part, content } of added) parts.set(part, [...(parts.get(part) ?? []), content]);
  };
  const losses: Loss[] = [];
  for (const one of wells) {
    const written = writer.well(one);
    add(written.added);
    losses.push(...written.losses);
  }
  const ended = await writer.end();
  add(ended.added);
  const files: MadeFile[] = ended.files.map(({ name, parts: order }) => ({
    name,
    bytes: bytesOf(order.flatMap((part) => parts.get(part) ?? [])),
  }));
  return { files, losses };
}
