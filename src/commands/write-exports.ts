import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drawingToDxf, spreadsheetToCsv, workbookOf } from '../export/index.ts';
import type { DescribedJob } from './describe-all.ts';
import { epochOf } from './stamp.ts';

/** The files of a job for other programs, beside its pages in the office folder: plans and tables. */
export async function writeExports(outputDir: string, described: readonly DescribedJob[]): Promise<void> {
  for (const { id, preparedOn, drawings, spreadsheets, workbook } of described) {
    const office = join(outputDir, id, 'office');
    await mkdir(office, { recursive: true });
    for (const { name, drawing } of drawings) {
      await writeFile(join(office, `${name}.dxf`), drawingToDxf(drawing));
    }
    for (const { name, spreadsheet } of spreadsheets) {
      await writeFile(join(office, `${name}.csv`), spreadsheetToCsv(spreadsheet));
    }
    const { name, sheets } = workbook;
    const bytes = await workbookOf({ sheets, epochSeconds: epochOf(preparedOn) });
    await writeFile(join(office, `${name}.xlsx`), bytes);
  }
}
