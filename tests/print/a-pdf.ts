/** A PDF of the given objects in the layout Skia uses, with a right cross-reference table. */
export function aPdf(objects: Readonly<Record<number, string>>, trailer: string): Uint8Array {
  const count = Math.max(...Object.keys(objects).map(Number)) + 1;
  const offsets = new Map<number, number>();
  let text = '%PDF-1.4\n';
  for (const [objectNumber, body] of Object.entries(objects)) {
    offsets.set(Number(objectNumber), text.length);
    text += `${objectNumber} 0 obj\n${body}\nendobj\n`;
  }
  const tableAt = text.length;
  text += `xref\n0 ${count}\n`;
  for (let objectNumber = 0; objectNumber < count; objectNumber += 1) {
    const offset = offsets.get(objectNumber);
    text += `${String(offset ?? 0).padStart(10, '0')} ${offset === undefined ? '65535 f' : '00000 n'} \n`;
  }
  text += `trailer\n${trailer}\nstartxref\n${tableAt}\n%%EOF\n`;
  return new Uint8Array(Buffer.from(text, 'latin1'));
}
