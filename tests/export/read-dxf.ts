type Group = { readonly code: number; readonly value: string };
export type DxfEntity = { readonly type: string; readonly groups: readonly Group[] };
export type DxfRead = {
  /** First value of each header variable. */
  readonly header: ReadonlyMap<string, string>;
  readonly sections: readonly string[];
  readonly layers: readonly string[];
  readonly entities: readonly DxfEntity[];
  readonly handles: readonly string[];
};

/**
 * A DXF file read by its grammar alone: pairs of lines, a whole number and a value, up to EOF.
 * @throws {Error} Where a line breaks the grammar.
 */
export function readDxf(text: string): DxfRead {
  const groups = groupsOf(text);
  const sections = groups.flatMap(({ code, value }, index) =>
    code === 0 && value === 'SECTION' ? [{ name: groups[index + 1]?.value ?? '', start: index + 2 }] : [],
  );
  const inside = (name: string): readonly Group[] => {
    const start = sections.find((section) => section.name === name)?.start;
    if (start === undefined) throw new Error(`no section ${name}`);
    const rest = groups.slice(start);
    return rest.slice(
      0,
      rest.findIndex(({ code, value }) => code === 0 && value === 'ENDSEC'),
    );
  };
  const header = inside('HEADER');
  return {
    header: new Map(
      header.flatMap(({ code, value }, index) =>
        code === 9 ? [[value, header[index + 1]?.value ?? ''] as const] : [],
      ),
    ),
    sections: sections.map(({ name }) => name),
    layers: recordsOf(inside('TABLES'))
      .filter(({ type }) => type === 'LAYER')
      .map((layer) => textAt(layer, 2)),
    entities: recordsOf(inside('ENTITIES')),
    handles: recordsOf(groups.slice(sections.find(({ name }) => name === 'TABLES')?.start))
      .flatMap((record) => record.groups.filter(({ code }) => code === 5))
      .map(({ value }) => value),
  };
}

export function numbersOf(entity: DxfEntity, code: number): number[] {
  return entity.groups.filter((group) => group.code === code).map(({ value }) => Number(value));
}

/** The value of the first group of a code; empty where there is none. */
export function textAt(entity: DxfEntity, code: number): string {
  return entity.groups.find((group) => group.code === code)?.value ?? '';
}

export type PolylineVertex = { readonly xIn: number; readonly yIn: number; readonly bulge: number };

export function verticesOf(polyline: DxfEntity): PolylineVertex[] {
  const vertices: { xIn: number; yIn: number; bulge: number }[] = [];
  for (const { code, value } of polyline.groups) {
    const last = vertices.at(-1);
    if (code === 10) vertices.push({ xIn: Number(value), yIn: Number.NaN, bulge: 0 });
    else if (code === 20 && last !== undefined) last.yIn = Number(value);
    else if (code === 42 && last !== undefined) last.bulge = Number(value);
  }
  return vertices;
}

/**
 * Area inside a closed polyline [in²], anticlockwise positive, by Green's theorem along every piece:
 * half the integral of x dy - y dx; on an arc about c from direction s to e,
 * (R² (e - s) + R (cx (sin e - sin s) - cy (cos e - cos s))) / 2.
 */
export function areaSqIn(vertices: readonly PolylineVertex[]): number {
  return vertices.reduce((sumSqIn, from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from;
    if (from.bulge === 0) return sumSqIn + (from.xIn * to.yIn - to.xIn * from.yIn) / 2;
    const sweepRad = 4 * Math.atan(from.bulge);
    const chordIn = Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn);
    const radiusIn = Math.abs(chordIn / 2 / Math.sin(sweepRad / 2));
    const chordRad = Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn);
    // The start lies a quarter turn and half the sweep behind the direction of the chord, seen from the centre.
    const startRad = chordRad - sweepRad / 2 - (Math.sign(sweepRad) * Math.PI) / 2;
    const endRad = startRad + sweepRad;
    const centre = {
      xIn: from.xIn - radiusIn * Math.cos(startRad),
      yIn: from.yIn - radiusIn * Math.sin(startRad),
    };
    return (
      sumSqIn +
      (radiusIn ** 2 * sweepRad +
        radiusIn *
          (centre.xIn * (Math.sin(endRad) - Math.sin(startRad)) -
            centre.yIn * (Math.cos(endRad) - Math.cos(startRad)))) /
        2
    );
  }, 0);
}

function groupsOf(text: string): Group[] {
  const lines = text.split('\n');
  if (lines.at(-1) === '') lines.pop();
  if (lines.length % 2 !== 0) throw new Error(`an odd number of lines: ${lines.length}`);
  const groups: Group[] = [];
  for (let index = 0; index < lines.length; index += 2) {
    const code = (lines[index] ?? '').trim();
    if (!/^\d{1,4}$/.test(code)) throw new Error(`line ${index + 1} is no group code: ${code}`);
    groups.push({ code: Number(code), value: lines[index + 1] ?? '' });
  }
  const end = groups.findIndex(({ code, value }) => code === 0 && value === 'EOF');
  if (end !== groups.length - 1) throw new Error('EOF is not the last group');
  return groups;
}

function recordsOf(groups: readonly Group[]): DxfEntity[] {
  const records: { type: string; groups: Group[] }[] = [];
  for (const group of groups) {
    if (group.code === 0) records.push({ type: group.value, groups: [] });
    else records.at(-1)?.groups.push(group);
  }
  return records;
}
