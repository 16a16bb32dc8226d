import { fileURLToPath } from 'node:url';

/** The folder of this project: templates, schemas and the bundled browser are found from here. */
export const PROJECT_DIR = fileURLToPath(new URL('../..', import.meta.url));
