import { writeJsonSchemas } from './json-schemas.ts';

writeJsonSchemas();
