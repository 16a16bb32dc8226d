import { appendFileSync } from 'node:fs';

export async function resolve(specifier, context, next) {
  const resolved = await next(specifier, context);
  appendFileSync(process.env.LOADED, `${resolved.url}\n`);
  return resolved;
}
