// Loaded before the program: stands for a fault of ours in the middle of a build.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

const read = fs.readFileSync;
fs.readFileSync = (path, ...more) => {
  if (String(path).endsWith('proposal.njk')) throw new TypeError('injected');
  return read(path, ...more);
};
syncBuiltinESMExports();
