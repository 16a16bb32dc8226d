/**
 * A view model that answers for keys it has and throws for any other. Nunjucks alone is silent for
 * `{% if view.typo %}`, `{% for row in view.typo %}` and `{{ view.typo | filter }}`.
 *
 * @param view  Plain data: objects, arrays, strings, numbers, booleans, null.
 * @param place Whose view it is, for the message: job and document.
 * @throws {Error} On reading an unknown key (naming place and path), and on any write.
 */
export function strictView<T extends object>(view: T, place: string): T {
  return guarded(view, place, 'view') as T;
}

/** The plain data behind a strict view, for our own code that may ask for optional keys. */
export function plainView<T>(view: T): T {
  return typeof view === 'object' && view !== null ? ((plain.get(view) as T | undefined) ?? view) : view;
}

const plain = new WeakMap<object, object>();

function guarded(target: object, place: string, path: string): object {
  const proxy = new Proxy(target, {
    get(_, key) {
      // Symbols are asked for by the language itself (iteration, string tags).
      if (typeof key === 'symbol') return Reflect.get(target, key);
      if (Object.hasOwn(target, key)) {
        const value: unknown = Reflect.get(target, key);
        const isPart = typeof value === 'object' && value !== null;
        return isPart ? guarded(value, place, pathTo(target, path, key)) : value;
      }
      if (Array.isArray(target) && key in Array.prototype) return Reflect.get(target, key);
      throw new Error(`${place}: the template asks for ${pathTo(target, path, key)}, which does not exist`);
    },
    set(_, key) {
      throw new Error(`${place}: a template must not change ${pathTo(target, path, String(key))}`);
    },
  });
  plain.set(proxy, target);
  return proxy;
}

function pathTo(target: object, path: string, key: string): string {
  return Array.isArray(target) && /^\d+$/.test(key) ? `${path}[${key}]` : `${path}.${key}`;
}
