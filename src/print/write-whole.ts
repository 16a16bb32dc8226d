import { randomUUID } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/**
 * Write a file so that a reader sees the old one or the whole new one, never a part.
 *
 * The temporary name is in the same folder, since a rename is atomic only within one file system.
 */
export async function writeWhole(path: string, bytes: Uint8Array | string): Promise<void> {
  const temporary = join(dirname(path), `.${basename(path)}.${randomUUID()}.tmp`);
  try {
    const file = await open(temporary, 'wx');
    try {
      await file.writeFile(bytes);
    } finally {
      await file.close();
    }
    await rename(temporary, path);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
}
