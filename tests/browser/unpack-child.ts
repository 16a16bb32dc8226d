import { execFileSync } from 'node:child_process';
import { unpackChromium } from '../../src/print/unpack.ts';

// One of several processes that unpack at the same moment; prints what the browser says of itself.
const { executablePath, env } = await unpackChromium(process.argv[2] ?? '');
console.log(execFileSync(executablePath, ['--version'], { env, encoding: 'utf8' }).trim());
