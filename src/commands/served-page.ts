/**
 * A page as `serve` sends it: with a script that loads it anew when something changed, and with the
 * problems of the last try over the last good page. Without a good page, the problems alone.
 */
export function servedPage(html: string | null, trouble: string | null): string {
  const page =
    html ?? '<!DOCTYPE html><html lang="en"><head><title>Problems</title></head><body></body></html>';
  const addition = `${RELOAD}${trouble === null ? '' : troubleBlock(trouble)}`;
  return page.includes('</body>') ? page.replace('</body>', () => `${addition}</body>`) : page + addition;
}

const RELOAD = "<script>new EventSource('/.changes').onmessage = () => location.reload();</script>";

/** The problems as text: what stands in a file never becomes markup. */
function troubleBlock(trouble: string): string {
  const style =
    'position:fixed;inset:auto 0 0 0;max-height:60vh;overflow:auto;margin:0;padding:12px;background:#fff;color:#000;border-top:3px solid #000;white-space:pre-wrap;font-size:14px';
  return `<pre role="alert" style="${style}">${escaped(trouble)}</pre>`;
}

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}
