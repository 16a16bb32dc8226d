/** Shows how far a long step is: one line rewritten on a terminal, plain lines elsewhere. */
export type Progress = { readonly step: (text: string) => void; readonly end: () => void };

export function progressOn(stream: NodeJS.WriteStream): Progress {
  if (!stream.isTTY) return { step: (text) => void stream.write(`${text}\n`), end: () => undefined };
  return {
    step: (text) => void stream.write(`\r\u001b[2K${text.slice(0, Math.max(20, stream.columns - 1))}`),
    end: () => void stream.write('\r\u001b[2K'),
  };
}
