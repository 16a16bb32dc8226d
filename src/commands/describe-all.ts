import type { Drawing } from '../describe/drawing/index.ts';
import { describeJob } from '../describe/index.ts';
import type { SpreadsheetView } from '../describe/views.ts';
import type { DocumentToRender } from '../render/index.ts';
import { en } from '../words/index.ts';
import type { PreparedJob } from './prepare.ts';

export type DescribedJob = {
  readonly id: string;
  readonly preparedOn: string;
  readonly documents: readonly DocumentToRender[];
  /** The plans of the job, each with the name of its file. */
  readonly drawings: readonly { readonly name: string; readonly drawing: Drawing }[];
  /** Rows for a spreadsheet, each with the name of its file; none where a job has no such row. */
  readonly spreadsheets: readonly { readonly name: string; readonly spreadsheet: SpreadsheetView }[];
  /** Sheets for one file, with its name. */
  readonly workbook: { readonly name: string; readonly sheets: readonly SpreadsheetView[] };
};

/** Every document of every job, and in which folder it goes: only the proposal may be sent. */
export function describeAll(jobs: readonly PreparedJob[]): readonly DescribedJob[] {
  return jobs.map((prepared) => {
    const views = describeJob(prepared, en);
    const { plan, goesPlan } = views.workOrder;
    const { loads, materials } = views.spreadsheets;
    return {
      id: prepared.job.id,
      preparedOn: prepared.job.preparedOn,
      documents: [
        { kind: 'proposal', folder: 'homeowner', name: 'proposal', view: views.proposal },
        { kind: 'work-order', folder: 'office', name: 'work-order', view: views.workOrder },
        { kind: 'materials', folder: 'office', name: 'materials', view: views.materials },
        { kind: 'safety', folder: 'office', name: 'safety', view: views.safety },
        { kind: 'calculation', folder: 'office', name: 'calculation', view: views.calculation },
        { kind: 'binder', folder: 'office', name: 'binder', view: views.binder },
      ],
      drawings: [
        { name: 'plan-new', drawing: plan.drawing },
        ...(goesPlan === null ? [] : [{ name: 'plan-existing', drawing: goesPlan.drawing }]),
        ...views.workOrder.profiles.map(({ drawing: { drawing } }) => ({ name: drawing.id, drawing })),
      ],
      spreadsheets: loads === null ? [] : [{ name: 'loads', spreadsheet: loads }],
      workbook: { name: 'materials', sheets: materials },
    };
  });
}
