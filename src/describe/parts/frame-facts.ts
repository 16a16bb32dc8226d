import type { Job } from '../../calculate/job.ts';
import type { FrameFacts } from './frame.ts';

/** What the frame of a document takes from a job. */
export function frameFactsOf(job: Job): FrameFacts {
  const { company } = job;
  return {
    paper: company.paper,
    company: { name: company.name, address: company.address, phone: company.phone, email: company.email },
    job: {
      number: job.number,
      label: job.label,
      client: job.client.name,
      address: job.address,
      preparedOn: job.preparedOn,
      revision: job.revision,
    },
  };
}
