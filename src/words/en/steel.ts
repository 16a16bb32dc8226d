/** Mesh and bars, as the crew lays them and the office buys them. */
export const steel = {
  caption: 'Steel',
  slab: 'Slab',
  what: 'What',
  layout: 'Layout',
  amount: 'Take',
  chairs: 'Chairs',
  ties: 'Ties',
  mesh: (style: string) => `Mesh ${style}`,
  bar: {
    steel: (size: number) => `#${size} bar`,
    'glass-fibre': (size: number) => `#${size} glass fibre bar`,
  },
  bars: {
    steel: (size: number) => `#${size} bars`,
    'glass-fibre': (size: number) => `#${size} glass fibre bars`,
  },
  bothWays: (bars: string, spacing: string) => `${bars} at ${spacing} both ways`,
  eachWay: (bars: string, along: string, across: string) => `${bars} at ${along} along, ${across} across`,
  meshLayout: (lap: string, cover: string) =>
    `Lap ${lap}, ${cover} below the top; hold it up on chairs before the pour, never hook it up`,
  barsLayout: (along: number, across: number, cover: string) =>
    `${along} along, ${across} across, ${cover} from edges and top`,
  lap: (lap: string) => `lap ${lap}`,
  diagonals: (count: number) => `${count} across inner corners`,
  bentHere: (count: number, leg: string) => `${count} bent round corners, legs ${leg}`,
  bentOrdered: (count: number, leg: string) => `${count} come bent for corners, legs ${leg}`,
  sheets: (count: string) => `${count} sheets`,
  rolledOut: (length: string) => `${length} of roll`,
  pieces: (length: string) => `${length} of bar`,
  sticks: (count: string, stock: string) => `${count} of ${stock}`,
  chairsOf: (count: string, height: string) => `${count}, ${height} high`,
  and: ', ',
  plan: {
    heading: 'Bars',
    how: 'Thin lines are bars, heavy pieces of them laps, lines across inner corners extra bars. Laps lie at one end and the other in turn.',
    onJoint: (count: number, slab: string) =>
      `${slab}: ${count} ${count === 1 ? 'lap lies' : 'laps lie'} on a joint line, since the stock leaves no other place.`,
    glassFibre:
      'Glass fibre: cut it with a saw, wet or with a vacuum, never with a shear; never bend it, not even with heat. Gloves and sleeves: its dust and ends itch. Tie it with plastic, and tie it down: it floats.',
  },
  cutList: {
    caption: 'Bars one by one: cut these',
    bar: 'Bar',
    length: 'Length',
    count: 'Cut',
    places: 'For',
    as: {
      along: (count: number) => `${count} along`,
      across: (count: number) => `${count} across`,
      diagonal: (count: number) => `${count} at inner corners`,
      bent: (count: number) => `${count} to bend in the middle`,
    },
    place: (slab: string, what: string) => `${slab}: ${what}`,
    andPlace: '; ',
  },
  cutPlan: {
    caption: 'Out of which bar',
    bar: 'Bar',
    take: 'Take',
    stock: 'Of',
    cuts: 'Cut from each',
    left: 'Over from each',
    cut: (count: number, length: string) => `${count} × ${length}`,
    andCut: ' + ',
    nothing: 'none',
    least: (length: string, left: string) =>
      `${length} of stock, shown to be the least there can be; ${left} is left over.`,
    found: (length: string, left: string) =>
      `${length} of stock, the least that was found; ${left} is left over.`,
  },
  shopping: {
    bentPieces: (size: number, leg: string) =>
      `#${size} glass fibre bar, bent square where it is made, legs ${leg}`,
    mesh: (style: string, slab: string) => `Mesh sheets ${style}, ${slab}`,
    rolls: (style: string) => `Mesh ${style} in rolls`,
    ofRoll: (count: string, length: string) => `${count} of ${length}`,
    chairs: (height: string, slab: string) => `Chairs ${height} high, ${slab}`,
  },
} as const;
