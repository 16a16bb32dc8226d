import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drawingToDxf, spreadsheetToCsv } from '../export/index.ts';
import type { DescribedJob } from './describe-all.ts';

/** The files of a job for other programs, beside its pages in the office folder: plans and spreadsheets. */
export async function writeExports(outputDir: string, described: readonly DescribedJob[]): Promise<void> {
  for (const { id, drawings, spreadsheets } of described) {
    const office = join(outputDir, id, 'office');
    await mkdir(office, { recursive: true });
    for (const { name, drawing } of drawings) {
      await writeFile(join(office, `${name}.dxf`), drawingToDxf(drawing));
    }
    for (const { name, spreadsheet } of spreadsheets) {
      await writeFile(join(office, `${name}.csv`), spreadsheetToCsv(spreadsheet));
    }
  }
}
