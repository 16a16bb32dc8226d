import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeJsonSchemas } from '../../src/read/json-schemas.ts';
import { generatedParts, withGenerated } from './reference.ts';

/** Makes the tables of README.md and the JSON Schemas of the editors anew. */
const README = join(import.meta.dirname, '..', '..', 'README.md');

writeJsonSchemas();
writeFileSync(README, withGenerated(readFileSync(README, 'utf8'), generatedParts()));
console.log('README.md and src/read/schema/*.schema.json are current.');
