/** The first page of the site: all jobs. */
export const jobsPage = {
  title: 'Jobs',
  intro:
    'Every job in the folder, next date first. What may be sent stands in a homeowner folder; everything else stays in the office.',
  headings: {
    job: 'Job',
    stage: 'Stage',
    place: 'Place',
    next: 'Next',
    findings: 'Findings',
    documents: 'Documents',
  },
  overdue: 'past',
  next: {
    bid: 'Offer holds until',
    signed: 'Starts',
    scheduled: 'Starts',
    working: 'Pour',
    done: 'Last payment',
  },
  stages: {
    bid: 'Bid',
    signed: 'Signed',
    scheduled: 'Scheduled',
    working: 'Working',
    done: 'Done',
    paid: 'Paid',
  },
  findings: (stop: number, fix: number, note: number) => `${stop} stop, ${fix} fix, ${note} note`,
  noFindings: 'none',
} as const;
