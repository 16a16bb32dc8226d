import { workbookOf } from '../../src/export/index.ts';

/** Prints the hour of the first second of 1970 on the clock of this process, and the bytes of a small workbook. */
const sheets = [{ name: 'One', headings: ['only'], rows: [['a']] }];
const bytes = await workbookOf({ sheets, epochSeconds: Number(process.argv[2]) });
process.stdout.write(`${new Date(0).getHours()} ${Buffer.from(bytes).toString('base64')}`);
