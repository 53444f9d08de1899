import { open, rename, rm } from 'node:fs/promises';
import path from 'node:path';

/**
 * Writes a file whole or not at all: beside its place, synced to the disk, then renamed over. A
 * reader meets the old file or the new one. Throws what the disk says, with the old file as it was.
 */
export async function replaceFile(file: string, bytes: Uint8Array | string): Promise<void> {
  const part = path.join(path.dirname(file), `.${path.basename(file)}.${process.pid}.part`);
  try {
    const handle = await open(part, 'w');
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(part, file);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}
