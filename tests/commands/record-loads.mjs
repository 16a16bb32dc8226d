// Loaded before the program: writes down every module that it loads, into the file LOADED names.
import { appendFileSync } from 'node:fs';
import { createRequire, register } from 'node:module';

register('./record-loads-hook.mjs', import.meta.url);
const { cache } = createRequire(import.meta.url);
process.on('exit', () => appendFileSync(process.env.LOADED, `${Object.keys(cache).join('\n')}\n`));
