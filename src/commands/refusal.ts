import { BusyError } from '../print/index.ts';
import { ForeignError } from './output-folder.ts';

/** What this machine may refuse, by the code of the system; anything else is a fault of ours. */
const REFUSALS: Readonly<Record<string, string>> = {
  ENOSPC: 'there is no room left on the disk',
  EDQUOT: 'there is no room left for you on the disk',
  EFBIG: 'a file may not grow that large here',
  EROFS: 'it can only be read, not written',
  EACCES: 'permission is denied',
  EPERM: 'it may not be changed; is it open in another program?',
  EBUSY: 'it is in use; is it open in another program?',
  ENOTDIR: 'a part of this path is a file, not a folder',
  EEXIST: 'a file has this name, so it cannot be a folder',
  EADDRINUSE: 'this port is taken by another program; choose one with --port N',
  EMFILE: 'too many files are open',
  EIO: 'the disk reports an error',
};

/**
 * A sentence for what the machine refused (a full disk, a folder that may not be written, a port
 * that is taken, a build that does not end), or null for an error that is our own fault.
 */
export function refusalSentence(error: unknown): string | null {
  if (error instanceof BusyError) {
    const { lockFolder, ownerPid } = error;
    return `Another build (process ${ownerPid}) is still writing there. If none is running, remove ${lockFolder} and try again.`;
  }
  if (error instanceof ForeignError)
    return `${error.place} would be replaced, and no build made it: name another folder with --output, or move it away.`;
  if (!(error instanceof Error && 'code' in error)) return null;
  const reason = REFUSALS[String(error.code)];
  if (reason === undefined) return null;
  const place = placeOf(error);
  return `${place === null ? 'This cannot be done' : `${place} cannot be used`}: ${reason}.`;
}

function placeOf(error: Error): string | null {
  if ('path' in error && typeof error.path === 'string') return error.path;
  if ('port' in error && 'address' in error) return `${error.address}:${error.port}`;
  return null;
}
