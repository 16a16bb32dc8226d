import type { PublicText } from '../../src/calculate/text.ts';
import type { Drawing } from '../../src/describe/drawing/index.ts';
import type {
  BinderView,
  CalculationView,
  CheckListView,
  FindingView,
  FrameView,
  HazardView,
  JobsPageView,
  MaterialsView,
  ProposalView,
  SafetyView,
  SiteWalkView,
  TableView,
  WorkOrderView,
} from '../../src/describe/views.ts';
import { TICK_BOX, WRITE_LINE } from '../../src/describe/views.ts';

/** Small view models written by hand, of the size a plain job has; no figure in them is computed. */

type Unbranded<T> = T extends PublicText
  ? string
  : T extends Drawing | string | boolean | null
    ? T
    : T extends readonly (infer Item)[]
      ? readonly Unbranded<Item>[]
      : { readonly [Key in keyof T]: Unbranded<T[Key]> };

export function aDrawing(id: string, size = { widthIn: 3.4, heightIn: 2.6 }): Drawing {
  const { widthIn, heightIn } = size;
  const corners = [
    { kind: 'move', xIn: 0.4, yIn: 0.4 },
    { kind: 'line', xIn: widthIn - 0.4, yIn: 0.4 },
    { kind: 'line', xIn: widthIn - 0.4, yIn: heightIn - 0.6 },
    { kind: 'line', xIn: 0.4, yIn: heightIn - 0.6 },
    { kind: 'close' },
  ] as const;
  const label = { anchor: 'middle', sizePt: 8, weight: 400, turnDeg: 0 } as const;
  return {
    id,
    title: 'Front walk <new> & drive',
    widthIn,
    heightIn,
    origin: { xIn: 0, yIn: 0 },
    scale: { paperInPerIn: 1 / 96, text: '1/8 in = 1 ft' },
    layers: [
      {
        name: 'new-slab',
        primitives: [
          { kind: 'hatch', parts: corners, pattern: 'new' },
          { kind: 'path', parts: corners, weightMm: 0.7, dash: 'solid' },
        ],
      },
      {
        name: 'labels',
        primitives: [
          { kind: 'text', ...label, xIn: widthIn / 2, yIn: heightIn / 2, text: 'Front walk' },
          { kind: 'text', ...label, xIn: widthIn / 2, yIn: 0.3, text: '24′ 0″' },
          { kind: 'text', ...label, xIn: widthIn / 2, yIn: heightIn - 0.15, text: 'Scale 1 : 96' },
        ],
      },
    ],
  };
}

export function aFrame(
  kind: FrameView['kind'],
  documentName: string,
  paper: FrameView['paper'] = 'letter',
): FrameView {
  return {
    kind,
    language: 'en',
    title: `${documentName}, Front walk and drive, 2026-014`,
    paper,
    head: { left: 'Harbor Flatwork', right: `${documentName} · 2026-014 Front walk and drive` },
    foot: { left: '2026-014 · Revision B · May 4, 2026', page: 'Page', of: 'of' },
    block: {
      company: 'Harbor Flatwork',
      companyLines: ['12 Quarry Road, Millbrook', '555-0142 · office@example.com', 'Licence 000000'],
      documentName,
      jobLabel: 'Front walk and drive',
      cells: [
        { label: 'For', value: 'R. Example' },
        { label: 'Place', value: '48 Maple Court, Millbrook' },
        { label: 'Job', value: '2026-014' },
        { label: 'Date', value: 'May 4, 2026' },
        { label: 'Revision', value: 'B' },
      ],
    },
  };
}

function aTable(
  caption: string,
  headings: readonly string[],
  rows: readonly (readonly string[])[],
): TableView {
  return {
    caption,
    columns: headings.map((heading) => ({
      heading: heading.replace('>', ''),
      align: heading.startsWith('>') ? 'end' : 'start',
    })),
    rows: rows.map((cells) => ({ cells, note: null, isTotal: cells[0]?.startsWith('Total') ?? false })),
  };
}

const unbrandedProposal = (paper: FrameView['paper']): Unbranded<ProposalView> => ({
  frame: aFrame('proposal', 'Proposal', paper),
  summary: {
    offer:
      'We take out the old front walk and the cracked half of the drive, haul them away, and pour new concrete 4 in thick on 6 in of crushed stone.',
    facts: [
      { label: 'Where', value: '48 Maple Court, Millbrook' },
      { label: 'New concrete', value: '612 sq ft, about 7 3/4 cubic yards' },
      { label: 'Work days', value: 'May 11 to May 15, 2026' },
      { label: 'You can walk on it', value: 'May 16, 2026' },
      { label: 'You can park on it', value: 'May 22, 2026' },
      { label: 'This price holds until', value: 'June 3, 2026' },
    ],
    whatYouGet: aTable('What you get', ['New', '>Size'], [['Front walk', '96 sq ft']]),
    price: { label: 'Price, all in', value: '$11,480.00' },
    next: {
      heading: 'What happens next',
      items: [
        'Read the plan and the agreed prices on the next pages, and ask us anything.',
        'Tick the options you want, sign on the last page and send us a copy.',
        'We apply for the permit and call you with the first day.',
      ],
    },
    signing: 'Both signatures have their place on the last page.',
  },
  areas: {
    heading: 'What we will do, area by area',
    items: [
      {
        heading: 'Front walk',
        plan: { heading: 'Plan of the front walk', drawing: aDrawing('walk') },
        facts: [
          { label: 'Size', value: '24′ 0″ by 4′ 0″' },
          { label: 'Thickness', value: '4 in' },
          { label: 'Fall', value: '1/4 in per foot, away from the house' },
          { label: 'Surface', value: 'Broom finish, across the walk' },
        ],
        points: [
          'Joints cut every 4 ft, so that the concrete cracks in the joint and not across the panel.',
          'A soft strip between the walk and the porch keeps the two apart.',
        ],
      },
      {
        heading: 'Drive, street half',
        plan: { heading: 'Plan of the drive', drawing: aDrawing('drive', { widthIn: 4.2, heightIn: 3.3 }) },
        facts: [
          { label: 'Size', value: '28′ 6 3/8″ by 18′ 0″' },
          { label: 'Thickness', value: '5 in' },
          { label: 'Reinforcement', value: 'No. 3 bars, 18 in both ways' },
        ],
        points: ['The half by the garage stays; we saw a straight line between old and new.'],
      },
      {
        heading: 'Strip beside the garage',
        plan: null,
        facts: [{ label: 'Size', value: '10′ 0″ by 1′ 6″' }],
        points: [],
      },
    ],
  },
  publicWalks: [
    {
      facts: { heading: 'The public walk', items: ['It has settled.', 'The city decides about it.'] },
      ways: aTable(
        'What can be done',
        ['Way', 'What it means', 'Who decides', 'Choice'],
        [['Meet it as it is', 'The slab ends level with it.', 'You', TICK_BOX]],
      ),
      edge: {
        heading: 'The edge that is left',
        sentence: 'I know that an edge is left.',
        lines: [{ who: 'Homeowner', date: 'Date' }],
      },
    },
  ],
  removal: {
    heading: 'What goes',
    items: [
      'The front walk, 96 sq ft, 4 in thick',
      'The street half of the drive, 516 sq ft',
      'One dead shrub at the porch',
    ],
  },
  stays: {
    heading: 'What stays and is protected',
    items: ['The porch and its steps', 'The brick wall along the drive', 'The maple and its roots'],
  },
  prices: {
    ...aTable(
      'Prices',
      ['', 'What', '>Price'],
      [
        ['', 'Front walk', '$2,140.00'],
        ['', 'Drive, street half', '$8,720.00'],
        ['', 'Strip beside the garage', '$620.00'],
        ['Total', 'Price, all in', '$11,480.00'],
        [TICK_BOX, 'Option: exposed aggregate on the walk', '+ $860.00'],
        [TICK_BOX, 'Option: two conduits under the walk', '+ $140.00'],
      ],
    ),
  },
  payments: aTable(
    'Payments',
    ['When', '>Share', '>Amount'],
    [
      ['On signing', '10 %', '$1,000.00'],
      ['When the old concrete is gone and the forms stand', '40 %', '$4,592.00'],
      ['When the concrete is poured and finished', '40 %', '$4,592.00'],
      ['After the walk round with you', 'rest', '$1,296.00'],
    ],
  ),
  hidden: {
    heading: 'What we cannot see yet',
    intro: 'If we find one of these, we stop, show you a photograph, and go on at the price agreed here.',
    table: {
      ...aTable(
        'Agreed prices for hidden conditions',
        ['What we find', '>Price', 'For each'],
        [
          ['Steel in the old slab', '$185.00', 'load'],
          ['Old slab thicker than 4 in', '$1.10', 'sq ft and inch'],
          ['Soft ground', '$96.00', 'cubic yard dug out and filled'],
          ['One more load to the recycling yard', '$240.00', 'load'],
        ],
      ),
      rows: [
        {
          cells: ['Steel in the old slab', '$185.00', 'load'],
          note: 'We look at the first broken edge with you.',
          isTotal: false,
        },
        { cells: ['Old slab thicker than 4 in', '$1.10', 'sq ft and inch'], note: null, isTotal: false },
        { cells: ['Soft ground', '$96.00', 'cubic yard dug out and filled'], note: null, isTotal: false },
      ],
    },
  },
  notIncluded: {
    heading: 'Not included',
    items: ['Sprinkler pipes and their repair', 'Sealing the new concrete', 'Grass seed'],
  },
  calendar: aTable(
    'Your calendar',
    ['Date', 'What we do', 'What you cannot use'],
    [
      ['Monday, May 11', 'Take out the walk and the drive', 'Drive, front door'],
      ['Tuesday, May 12', 'Stone and forms', 'Drive, front door'],
      ['Wednesday, May 13', 'Pour and finish', 'Drive, front door'],
      ['Saturday, May 16', 'The walk carries you', 'Drive'],
      ['Friday, May 22', 'The drive carries a car', ''],
    ],
  ),
  access: {
    heading: 'How we get in',
    items: [
      'Please use the back door from May 11 to May 15.',
      'The mixer stands in the street; two cars need another place.',
    ],
  },
  beforeWeCome: {
    heading: 'Before we come',
    items: ['Move cars out by 7 a.m.', 'Switch off the sprinklers the evening before.'],
  },
  aboutConcrete: {
    heading: 'What concrete does',
    items: [
      'Hairline cracks and shades of grey are normal.',
      'A crack wider than 1/8 in, or with one side higher, we repair.',
    ],
  },
  care: {
    heading: 'The first month',
    items: ['Keep it wet or covered for 7 days.', 'No salt in the first winter.'],
  },
  terms: {
    heading: 'Terms',
    clauses: [
      'What if I change my mind?',
      'What if it rains?',
      'Who gets the permit?',
      'What does the warranty cover?',
      'Who is insured?',
      'What if we disagree?',
    ].map((question) => ({
      question,
      answer:
        'Tell us in writing. We answer within two working days, say what it costs and what it changes in the calendar, and do nothing before you have signed the change. Nothing here takes away a right the law gives you.',
    })),
  },
  standards:
    'Work follows the residential concrete guides named in the terms; the local building office has the last word.',
  signatures: {
    heading: 'Signatures',
    sentence: 'We both agree to this proposal, revision B of May 4, 2026, with the options ticked above.',
    lines: [
      { who: 'Homeowner', date: 'Date' },
      { who: 'For Harbor Flatwork', date: 'Date' },
    ],
  },
});

export function aProposal(paper: FrameView['paper'] = 'letter'): ProposalView {
  return unbrandedProposal(paper) as ProposalView;
}

const findings: readonly FindingView[] = [
  {
    severity: 'fix',
    severityWord: 'Fix',
    place: 'slabs.drive.joints',
    sentence: 'One panel is longer than it should be for its thickness.',
    limit: 'Panel length to width 1.62; at most 1.5.',
    source: 'A guide to concrete slabs, section 3.2',
    acknowledged: null,
  },
  {
    severity: 'note',
    severityWord: 'Note',
    place: 'haul.load-3',
    sentence: 'The trailer is loaded close to its limit.',
    limit: 'Payload 6,840 lb; at most 7,000 lb.',
    source: 'Plate on the trailer',
    acknowledged: 'Accepted by the office on May 2, 2026: the yard has a scale.',
  },
];

function aCheckList(heading: string, items: readonly (readonly [string, string | null])[]): CheckListView {
  return {
    heading,
    items: items.map(([text, quantity]) => ({ text, quantity, isHold: text.startsWith('Hold') })),
  };
}

function aDay(date: string, weekday: string, phase: string): WorkOrderView['days'][number] {
  return {
    date,
    weekday,
    phase,
    facts: [
      { label: 'Crew', value: 'Foreman and 3' },
      { label: 'Machines', value: 'Skid steer, dump trailer' },
      { label: 'Arrives', value: '7:30 stone, 9:00 second load' },
    ],
    before: aCheckList('Before you start', [
      ['Cars out, gate open, back door agreed with the owner', null],
      ['Utility marks are there and photographed', null],
    ]),
    work: aCheckList('The work', [
      ['Saw the line between old and new drive, full depth', '18 ft'],
      ['Break and load the front walk', '96 sq ft'],
      ['Break and load the street half of the drive; weigh the first load', '516 sq ft'],
      ['Hold: steel or a second slab found? Stop, photograph, call', null],
      ['Dig to 10 in under the string line', '18.9 cu yd'],
      ['Place and compact crushed stone in two layers', '11 3/8 cu yd'],
    ]),
    after: aCheckList('Before you leave', [
      ['Edges fenced, plates over the porch step', null],
      ['Street swept, drain uncovered', null],
    ]),
    wroteDown: { heading: 'Wrote down today', labels: ['Hours', 'Loads', 'Tickets', 'Cubic yards'] },
  };
}

export function aWorkOrder(paper: FrameView['paper'] = 'letter'): WorkOrderView {
  return {
    frame: aFrame('work-order', 'Work order', paper),
    plan: { heading: 'Plan', drawing: aDrawing('plan', { widthIn: 7.1, heightIn: 4 }) },
    goesPlan: { heading: 'What goes', drawing: aDrawing('goes', { widthIn: 7.1, heightIn: 3 }) },
    facts: [
      { label: 'Owner’s phone', value: '555-0188' },
      { label: 'New concrete', value: '612 sq ft, 7.75 cu yd' },
      { label: 'Water and power', value: 'Left of the garage' },
    ],
    fixtures: {
      plan: { heading: 'Drains and lids', drawing: aDrawing('lids', { widthIn: 7.1, heightIn: 3 }) },
      lids: aTable('Lids', ['No.', 'Lid', '>Set to'], [['L1', 'Cleanout', '99.80 ft']]),
      pipes: aTable('Pipes', ['No.', 'Pipe', '>Size'], [['P1', 'Downspout', '4″']]),
    },
    garages: aTable('Garage floors', ['Floor', '>Lip'], [['Garage floor', '1/2 in']]),
    keptDry: aTable('Kept dry', ['Line', 'Slab'], [['Lot line', 'Driveway']]),
    drains: aTable('Drains', ['No.', 'Drain', '>Rim'], [['D1', 'Channel drain', '99.80 ft']]),
    publicWalks: aTable(
      'Public walk',
      ['Walk', 'End', '>Now', '>Should be', '>Apart', '>Build to', 'Slab runs'],
      [['City walk', 'Left end', '99.38 ft', '99.50 ft', '1 7/16″', '99.38 ft', 'falls 1/4 in per ft']],
    ),
    protect: {
      heading: 'Protect',
      items: [
        'Brick wall along the drive: plywood, full length',
        'Maple roots: no machine inside the drip line',
      ],
    },
    slabs: aTable(
      'Slabs',
      ['Slab', '>Area, sq ft', '>Thick, in', '>Base, in', '>Concrete, cu yd', 'Finish'],
      [
        ['Front walk', '96', '4', '6', '1.25', 'Broom'],
        ['Drive, street half', '516', '5', '6', '8.00', 'Broom'],
        ['Strip', '15', '4', '4', '0.25', 'Trowel'],
        ['Total', '627', '', '', '9.50', ''],
      ],
    ),
    photos: null,
    turns: null,
    checks: null,
    levels: {
      table: aTable(
        'Heights against the datum: Nail in the curb, called 100.00 ft',
        ['Point', '>Height', '>From Garage floor'],
        [
          ['Garage floor', '101.25 ft', 'level'],
          ['Lawn', '100.60 ft', '7 3/4″ below'],
        ],
      ),
      notes: ['The level notes from nail end 1/16″ off a known height; 1/8″ is allowed.'],
    },
    grades: {
      plan: { heading: 'Heights and falls', drawing: aDrawing('grades', { widthIn: 7.1, heightIn: 3 }) },
      tops: aTable(
        'Form tops: top of the concrete, and from Garage floor',
        ['Slab', 'Corner', '>Height', '>Measured down or up', '>The same'],
        [['Drive', '1', '100.71 ft', '6 1/2″ below', '0.54 ft below']],
      ),
      strings: aTable(
        'Strings from corner to corner, at the new top',
        ['Slab', 'Corners', '>Length', 'Falls', 'The top between them'],
        [['Drive', '1 to 2', '36′ 0″', '3/16″ / ft (1.3 %) to 2', 'along the string']],
      ),
      digs: aTable(
        'Dig and base: heights',
        ['Where', '>There now', '>Top', '>Under slab', '>Under base', '>Dig'],
        [['Drive, corner 1', '100.71 ft', '100.71 ft', '100.38 ft', '100.04 ft', '4″']],
      ),
      notes: ['Drive: 8.89 yd³ of soil to dig, as it lies.'],
    },
    profiles: [
      {
        drawing: {
          heading: 'Middle of the drive',
          drawing: aDrawing('profile-middle', { widthIn: 7, heightIn: 2.5 }),
        },
        table: aTable(
          'Profile: Middle of the drive',
          ['Point', '>Along', '>There now', '>Top', '>Under slab', '>Under base', '>Dig'],
          [['A, Drive', '0″', '100.71 ft', '100.71 ft', '100.38 ft', '100.04 ft', '4″']],
        ),
      },
    ],
    flights: null,
    flightSplits: null,
    stepTops: null,
    walls: null,
    curves: aTable(
      'Corners to lay out',
      ['Point', '>From A', '>From B'],
      [
        ['C', '18′ 0″', '33′ 8 7/8″'],
        ['D', '33′ 8 7/8″', '18′ 0″'],
      ],
    ),
    forms: aTable(
      'Forms',
      ['Edge', '>Length', 'Board', '>Top above mark'],
      [
        ['Walk, left', '24′ 0″', '2 by 4', '0 1/4″'],
        ['Walk, right', '24′ 0″', '2 by 4', '1 1/4″'],
        ['Drive, street', '18′ 0″', '2 by 6', '−3 3/8″'],
      ],
    ),
    formPieces: aTable(
      'Forms one by one',
      ['Slab', 'Form', '>Length', 'From', '>Whole', 'The last one'],
      [
        ['Front walk', 'Straight 1', '24′ 0″', '2 by 4', '2', 'whole, runs 8′ 0″ past the corner'],
        ['Drive', 'Curve 1', '2′ 4 1/4″', 'strip', '0', 'cut 3′ 4 5/16″ out of strip no. 1; 1 lap of 1′ 0″'],
      ],
    ),
    joints: aTable(
      'Joints',
      ['Joint', '>Length', '>Depth', 'Cut before'],
      [
        ['J1 to J5', '4′ 0″', '1 1/4″', '12 hours after finishing'],
        ['J6', '28′ 6 3/8″', '1 1/4″', '12 hours after finishing'],
      ],
    ),
    panels: aTable(
      'Panels between the joints',
      ['Panel', 'Slab', '>Size', '>Long to wide', '>Sharpest corner'],
      [['A, B, C', 'Driveway', '12′ 0″ × 9′ 0″', '1.33', '90°']],
    ),
    pours: aTable(
      'Pours',
      ['Pour', 'Panels', '>Area', '>Concrete', 'Ends at'],
      [['1', 'Driveway A to C', '320 sq ft', '4.1 yd³', 'J2, Driveway']],
    ),
    steel: aTable('Steel', ['Bar', '>Count', '>Length'], [['No. 3', '19', '17′ 6″']]),
    edges: aTable('Edges', ['Edge', 'Joint', '>Length'], [['1', 'Free', '36 ft']]),
    bars: {
      plan: { heading: 'Bars and laps', drawing: aDrawing('bars', { widthIn: 7.1, heightIn: 3 }) },
      notes: ['Laps lie at one end and the other in turn.'],
      cutList: aTable('Cut these', ['Bar', '>Length', '>Cut'], [['No. 3', '17′ 6″', '19']]),
      cutPlan: aTable('Out of which bar', ['Bar', '>Take', 'Cut'], [['No. 3', '19', '1 × 17′ 6″']]),
    },
    goes: aTable(
      'What goes',
      ['What', 'Of', '>Thick', 'Hauled as'],
      [['Walk', 'Concrete, mesh in it', '4″ assumed, up to 5″', 'Concrete with steel']],
    ),
    bays: {
      notes: { heading: 'Before you chalk', items: ['The number in the circle is the load.'] },
      chalked: {
        plan: { heading: 'Load bays', drawing: aDrawing('bays', { widthIn: 7.1, heightIn: 3 }) },
        lines: aTable(
          'Bay lines',
          ['>Load', 'On', '>Bay', 'Line'],
          [['2', 'Drive', '162 sq ft', '9′ 0″ from A and B']],
        ),
      },
    },
    loads: aTable(
      'Loads out',
      ['Load', 'Chalk on the slab', '>Weight, lb'],
      [['1', 'Walk, panels 1 to 6', '4,650']],
    ),
    pieceNotes: ['Break to 24″ or less: East yard takes nothing larger.'],
    reChalk: aTable(
      'If the old slab is of another thickness',
      ['From', 'Trailer', '>Thick', '>Chalk for one load', '>Loads each takes'],
      [
        ['Walk', 'Long box', '4″, as planned', '190 sq ft', '1'],
        ['Walk', 'Long box', '4 1/2″', '168 sq ft', '1'],
      ],
    ),
    findings: { heading: 'Look out for', items: findings },
    days: [aDay('May 11, 2026', 'Monday', 'Take out'), aDay('May 12, 2026', 'Tuesday', 'Stone and forms')],
    pourDay: {
      heading: 'Pour day: Wednesday 13 May 2026',
      facts: [{ label: 'First concrete', value: '8:00 am' }],
      goNoGo: aTable(
        'Go or no go',
        ['', 'Look', 'Go', 'Forecast'],
        [
          [TICK_BOX, 'Rain until the face has set', 'chance 30 % at most', '20 %, 0.05 in'],
          [TICK_BOX, 'Base: no puddle, no soft spot', 'firm under a boot', WRITE_LINE],
        ],
      ),
      clock: aTable(
        'The day in its order',
        ['', 'Step', 'From', 'Until'],
        [
          [TICK_BOX, 'Place, screed, bull float at once', '8:00 am', '10:15 am'],
          [TICK_BOX, 'Wait: a foot leaves 1/4″', '8:00 am', '11:00 am'],
        ],
      ),
      clockNotes: ['The saw window is 8:45 pm to 3:30 am, day after.'],
      drying: {
        table: aTable(
          'Drying by the hour',
          ['Hour', 'Sky', '>Air', '>Humidity', '>Wind', '>Rain', '>Loses', 'Then'],
          [['8:00 am', 'clear', '48 °F', '70 %', '5 mph', '10 %', '0.03 lb/sq ft/h', 'go on']],
        ),
        legend: 'Watch: fog at hand.',
      },
      measures: [{ heading: 'It will be cold', items: ['Blankets on as soon as they do not mark.'] }],
      rain: { heading: 'If rain comes', items: ['Never work it in.'] },
      notes: ['Not given, so not checked: hours of noise.'],
    },
    prePour: aCheckList('Before the mixer comes', [
      ['Forms shot with the level, heights as in the table', null],
      ['Base probed in every panel', '12 probes'],
      ['Steel up on chairs', '1 1/2 in'],
      ['Isolation strip at porch and garage', '42 ft'],
      ['Storm drain covered, washout ready', null],
      ['Hold: nobody orders before all boxes above are ticked', null],
    ]),
    prePourSign: {
      heading: 'Signed before the pour',
      sentence: 'I have seen every point above.',
      lines: [{ who: 'Foreman', date: 'Date and time' }],
    },
    chute: {
      heading: 'Each truck before it discharges',
      facts: [{ label: 'Mix', value: '4,000 psi, 6 % air' }],
      checks: {
        heading: 'Look at',
        items: [
          { text: 'The ticket', quantity: '4,000 psi', isHold: false },
          { text: 'The slump', quantity: '3 to 5 in', isHold: false },
        ],
      },
      refuse: { heading: 'Send back', items: ['No ticket', 'Lumps'] },
      water: { heading: 'Water', items: ['Once', 'Then 30 turns'] },
      trucks: aTable('Trucks', ['Truck', '>Load', 'Ticket'], [['1', '10 cu yd', WRITE_LINE]]),
      balance: {
        table: aTable('Balance', ['Where', 'Open', '>By'], [['Drive', WRITE_LINE, '58.9']]),
        notes: ['Call it in time.'],
      },
    },
    surprise: {
      heading: 'When something is not as drawn',
      items: ['Stop.', 'Photograph it with a tape in the picture.', 'Call the office before going on.'],
    },
  };
}

export function aMaterials(paper: FrameView['paper'] = 'letter'): MaterialsView {
  return {
    frame: aFrame('materials', 'Materials and haul plan', paper),
    loads: aTable(
      'Loads out',
      ['Load', 'Day', 'Truck', 'What', '>Volume, cu yd', '>Weight, lb', '>Of limit'],
      [
        ...Array.from({ length: 11 }, (_, at) => [
          `${at + 1}`,
          'Mon, May 11',
          'Dump trailer',
          at < 2 ? 'Front walk, panels 1 to 6' : 'Drive, strips from the street',
          '2.3',
          '6,640',
          '95 %',
        ]),
        ['Total', '', '', '', '25.3', '73,040', ''],
      ],
    ),
    loadNotes: ['Chalk the load lines on the slab before breaking; one line a load.'],
    trips: aTable(
      'Trips',
      ['Day', '>Load', 'Trailer', '>Back'],
      [['Mon, May 11', '1', 'Long box', '9:10 am']],
    ),
    why: aTable('Why', ['Plan', '>Trips', '>Cost'], [['As planned', '11', '$1,204.00']]),
    places: aTable(
      'Places',
      ['Place', 'Open', '>Last load', 'Largest piece', 'Mixed load', '>Anything else'],
      [
        [
          'East yard, 4 Quarry Road',
          'Monday to Friday, 7:00 am to 4:30 pm',
          '4:00 pm',
          'ask',
          'no',
          '$150.00',
        ],
      ],
    ),
    streams: aTable(
      'Where it goes',
      ['Material', 'Yard', '>Tons', '>Fee'],
      [['Clean concrete', 'Recycling yard', '36.52', '$657.36']],
    ),
    fleet: aTable('Trucks', ['Truck', '>Payload, lb', '>Trips'], [['Dump trailer', '7,000', '11']]),
    fleetNotes: ['A note on the fleet'],
    tieDowns: {
      table: aTable('On the trailer', ['Machine', '>Straps'], [['Loader', '2']]),
      note: 'Each strap counts half of its limit.',
    },
    base: {
      heading: 'Stone',
      facts: [
        { label: 'Crushed stone, 3/4 in', value: '18 tons' },
        { label: 'Layers', value: '2 of 3 in' },
      ],
    },
    concrete: {
      heading: 'Concrete',
      volume: aTable('Part by part', ['Part', '>Volume'], [['Drive', '8.9 cu yd']]),
      cost: aTable('Bill', ['Line', '>Amount'], [['Concrete', '$1,720.00']]),
      facts: [
        { label: 'Order', value: '10 cu yd' },
        { label: 'Mix', value: '4,000 psi, 6 % air' },
      ],
      placing: aTable('Ways', ['Where', 'How'], [['Drive', 'Chute']]),
      script: {
        heading: 'Say on the phone',
        intro: 'Line by line.',
        say: aTable('Say', ['', 'We say', 'Read back'], [[TICK_BOX, 'Ten yards, 4,000 psi.', WRITE_LINE]]),
        trucks: aTable('Trucks', ['Truck', '>Load'], [['1', '10 cu yd']]),
        ask: aTable('Ask', ['', 'We ask', 'Answer'], [[TICK_BOX, 'How long on the way?', WRITE_LINE]]),
        taken: ['Taken by', 'Order number'],
      },
    },
    steel: aTable('Steel', ['Bar', '>Count', '>Length'], [['No. 3', '19', '17′ 6″']]),
    stock: aTable('Bars to buy', ['Bar', '>Take'], [['No. 3', '19 of 20′']]),
    forms: aTable(
      'Form lumber',
      ['Board', '>Count', '>Length'],
      [
        ['2 by 4', '6', '12 ft'],
        ['2 by 6', '4', '12 ft'],
      ],
    ),
    shopping: {
      heading: 'Shopping list',
      suppliers: [
        {
          name: 'Millbrook Ready Mix',
          phone: '555-0170',
          orderBy: 'Order by Friday, May 8',
          table: aTable('Order', ['What', '>Quantity', ''], [['Concrete 4,000 psi', '10 cu yd', TICK_BOX]]),
        },
        {
          name: 'Yard and Stone',
          phone: '',
          orderBy: 'Order by Thursday, May 7',
          table: aTable(
            'Order',
            ['What', '>Quantity', 'Ticket'],
            [
              ['Crushed stone, 3/4 in', '18 tons', WRITE_LINE],
              ['Isolation strip, 1/2 in by 4 in', '42 ft', WRITE_LINE],
            ],
          ),
        },
      ],
    },
  };
}

function aHazard(number: string, name: string, wear = 'Wear: gloves, glasses, boots'): HazardView {
  return {
    number,
    name,
    when: 'Monday, 7:30 to 15:00',
    measures: [
      'Saw wet; the water is on before the blade turns.',
      'Nobody stands behind the machine while it backs.',
      'Stop when the line breaks, and call the foreman.',
    ],
    wear,
  };
}

export function aSafety(paper: FrameView['paper'] = 'letter'): SafetyView {
  return {
    frame: aFrame('safety', 'Safety sheet', paper),
    worst: {
      heading: 'The five worst today',
      hazards: [
        aHazard('1', 'Dust from sawing'),
        aHazard('2', 'Machine backing'),
        aHazard('3', 'Buried lines'),
        aHazard('4', 'Wet concrete on skin', 'Wear: waterproof gloves, boots, long sleeves'),
        aHazard('5', 'Heat'),
      ],
    },
    emergency: {
      heading: 'Emergency',
      facts: [
        { label: 'Call', value: '911' },
        { label: 'We are at', value: '48 Maple Court, Millbrook' },
        { label: 'Foreman', value: '555-0199' },
        { label: 'Hospital', value: 'Millbrook General, 4 miles' },
      ],
    },
    silica: {
      table: aTable(
        'Dust',
        ['Task', 'Tool with', 'Up to 4 hours', 'Over 4 hours'],
        [['Sawing outdoors', 'Water at the blade', 'no mask', 'no mask']],
      ),
      notes: ['Read with the tables of the rule named in the cautions.'],
    },
    rest: { heading: 'Also today', hazards: [aHazard('6', 'Lifting', ''), aHazard('7', 'Noise')] },
    welfare: {
      heading: 'For you',
      items: ['Water: 1 quart an hour each', 'Shade behind the trailer', 'Toilet at the street'],
    },
    cautions: {
      heading: 'Cautions',
      items: [
        'This sheet does not replace the site’s own safety program.',
        'Ask the authority having jurisdiction.',
      ],
    },
  };
}

export function aCalculation(paper: FrameView['paper'] = 'letter'): CalculationView {
  const topics = ['Geometry', 'Concrete', 'Haul', 'Price'];
  return {
    frame: aFrame('calculation', 'Calculation sheet', paper),
    warning: 'For the office only.',
    reading: 'Names are followed by their numbers.',
    findings: { heading: 'Findings', items: findings },
    margin: {
      heading: 'Margin',
      facts: [
        { label: 'Cost', value: '$8,953.20' },
        { label: 'Margin', value: '22.0 %' },
      ],
    },
    headings: { figure: 'Figure', value: 'Value', formula: 'Formula', source: 'Source' },
    topics: topics.map((heading) => ({
      id: heading.toLowerCase(),
      heading,
      groups: Array.from({ length: 14 }, (_, at) => ({
        heading: at % 5 === 0 ? null : `${heading.toLowerCase()}.drive-street-half.panel-${at + 1}`,
        figures: ['area', 'volume'].slice(at % 5 === 0 ? 1 : 0).map((name) => ({
          name: at % 5 === 0 ? `${heading.toLowerCase()}.drive-street-half.panel-${at + 1}.${name}` : name,
          value: '8.02 cu yd',
          formula: 'areaSqFt [516.3 sq ft] × thicknessIn [5 in] / 12 / 27 × (1 + 0.00)',
          origins: at % 4 === 0 ? 'areaSqFt: slabs.drive.area; thicknessIn: job.yaml:33; rounded up' : null,
          source: String(at + 1),
        })),
      })),
    })),
    sources: { heading: 'Sources', items: topics.map((topic) => `Handbook of ${topic}, table 3/4`) },
  };
}

export function aBinder(paper: FrameView['paper'] = 'letter'): BinderView {
  return {
    frame: aFrame('binder', 'Binder', paper),
    contents: {
      heading: 'Contents',
      entries: [
        { part: 'proposal', title: 'Proposal' },
        { part: 'work-order', title: 'Work order' },
        { part: 'materials', title: 'Materials and haul plan' },
        { part: 'safety', title: 'Safety sheet' },
        { part: 'calculation', title: 'Calculation sheet' },
      ],
    },
    proposal: aProposal(paper),
    workOrder: aWorkOrder(paper),
    materials: aMaterials(paper),
    safety: aSafety(paper),
    calculation: aCalculation(paper),
  };
}

export function aSiteWalk(paper: FrameView['paper'] = 'letter'): SiteWalkView {
  return {
    frame: aFrame('site-walk', 'Site walk', paper),
    intro: 'Fill in on the spot; the same words are the keys of the job file.',
    sections: [
      {
        heading: 'Who and where',
        hint: 'Ask who opens the gate and where the cars sleep.',
        lines: ['Owner', 'Phone', 'Address', 'Walked on', 'Gate, narrowest', 'Power and water'],
        table: null,
        sketch: false,
      },
      {
        heading: 'What goes',
        hint: null,
        lines: [],
        table: { columns: ['Name', 'Length', 'Width', 'Thickness', 'Steel?', 'Remarks'], emptyRows: 5 },
        sketch: false,
      },
      {
        heading: 'Sketch',
        hint: 'Two diagonals for every four-sided slab.',
        lines: [],
        table: null,
        sketch: true,
      },
    ],
  };
}

export function aJobsPage(): JobsPageView {
  const job = (id: string, date: string): JobsPageView['jobs'][number] => ({
    id,
    number: '2026-014',
    label: 'Front walk and drive',
    stage: 'signed',
    place: '48 Maple Court, Millbrook',
    next: { text: 'First day', date, shown: 'May 11, 2026' },
    findings: '1 to fix, 1 note',
    documents: [
      { text: 'Proposal', html: `${id}/homeowner/proposal.html`, pdf: `${id}/homeowner/proposal.pdf` },
      { text: 'Work order', html: `${id}/office/work-order.html`, pdf: null },
    ],
  });
  return {
    language: 'en',
    title: 'Jobs',
    intro: 'All jobs, the next date first.',
    headings: {
      job: 'Job',
      stage: 'Stage',
      place: 'Place',
      next: 'Next',
      findings: 'Findings',
      documents: 'Documents',
    },
    overdue: 'overdue',
    jobs: [job('maple-court', '2026-05-11'), { ...job('old-mill', '2025-05-11'), next: null }],
  };
}
