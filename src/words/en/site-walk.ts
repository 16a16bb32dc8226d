/** The blank sheet for the clipboard, in the order of the job file. */
export const siteWalk = {
  title: 'Site walk sheet',
  intro:
    'Fill in on the walk, top to bottom; the job file asks in the same order. Tape on the slope, write feet and inches or metres, never a bare number.',
  blocks: { who: 'Job', where: 'Place', when: 'Date' },
  sections: {
    job: {
      heading: 'Job and owner',
      lines: [
        'Job number',
        'Owner, phone, mail',
        'Address and cross street',
        'What they want, in their words',
      ],
    },
    access: {
      heading: 'Access',
      lines: [
        'Where the concrete truck can stand',
        'Gate, code, dog, who opens',
        'Tightest width for the loader',
        'Where cars sleep meanwhile',
      ],
    },
    existing: {
      heading: 'What is there and goes',
      hint: 'Thickness: dig at an edge, or write "assumed" and the most it may be. Steel: look at a broken edge. Note what lies on it; of a planter its walls.',
      columns: ['Thing', 'Length', 'Width', 'Thick', 'Measured?', 'Steel', 'Edges that stay'],
    },
    stays: {
      heading: 'What stays and must be protected',
      lines: [
        'Walls, doors, trees, lids; steps: each riser from the bottom up, tread, width',
        'Cracks that are there already: photograph them',
      ],
    },
    ground: {
      heading: 'Ground and emergency',
      lines: [
        'Soft, wet, clay; what the slab may be carrying',
        'Roots, wires, pipes, sprinklers known of',
        'Nearest hospital, address, phone',
        'Line marks: ticket number, good until',
      ],
    },
    heights: {
      heading: 'Heights',
      lines: [
        'Mark that heights are read against; level on',
        'Garage floor at the door: left, right',
        'How far to stay below it; joint in to the seal of the door',
        'Thresholds, public walk, gutter, steps that stay',
        'No water to: neighbor, window well, wall',
        'Drains: rim, pipe, where it ends; lids',
      ],
    },
    build: {
      heading: 'What will be built',
      hint: 'Corners numbered from the house, anticlockwise. A rounded corner: how far back along both edges.',
      columns: ['Slab', 'Length', 'Width', 'Rounded', 'Thick', 'Base', 'Falls to', 'Steel', 'Finish'],
    },
    steps: { heading: 'Steps', columns: ['Width', 'Risers', 'Riser', 'Tread', 'Landing'] },
    sketch: { heading: 'Sketch, north up' },
    plan: {
      heading: 'When and with whom',
      lines: ['Start not before', 'Days the owner is away', 'Crew and trailers'],
    },
    price: {
      heading: 'Price',
      lines: [
        'What is not included',
        'What may be hidden and should be priced beforehand',
        'Permits and fees',
      ],
    },
  },
} as const;
