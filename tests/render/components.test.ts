import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { templateEnvironment } from '../../src/render/environment.ts';
import { strictView } from '../../src/render/strict-view.ts';
import { markupFaults } from './markup-faults.ts';

type Example = { name: string; macro?: string; isEmpty?: boolean; options: object };

const templatesDir = new URL('../../templates', import.meta.url).pathname;
const environment = templateEnvironment(templatesDir, new Map()).nunjucks;
const components = readdirSync(join(templatesDir, 'components')).sort();

/** As the examples write it; nothing of it may reach the page as markup or run as a template. */
const HOSTILE = `<script>alert(1)</script> {{ 7*7 }} "double" 'single' & \\ {% raw %}`;

function examplesOf(component: string): Example[] {
  const source = readFileSync(join(templatesDir, 'components', component, 'examples.yaml'), 'utf8');
  return parse(source, { merge: true }) as Example[];
}

function renderExample(component: string, example: Example): string {
  const macro = example.macro ?? component.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
  return environment.renderString(
    `{% from "components/${component}/macro.njk" import ${macro} %}{{ ${macro}(options) }}`,
    { options: strictView(example.options, `example ${example.name}`) },
  );
}

/** Every text of an example, boxes and lines aside. */
function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

test('there are components', () => {
  expect(components.length).toBeGreaterThan(10);
});

describe.each(components)('%s', (component) => {
  const examples = examplesOf(component);

  test.each(examples)('renders: $name', (example) => {
    const html = renderExample(component, example);
    expect(markupFaults(html)).toEqual([]);
    expect(html).not.toMatch(/undefined|null|\[object/);
    if (example.isEmpty) expect(html.trim()).toBe('');
    else expect(html).toContain('<');
  });

  test('shows hostile text as text', () => {
    const hostile = examples.find((example) => textsOf(example).includes(HOSTILE));
    if (hostile === undefined) throw new Error(`${component} has no example with hostile text`);
    const html = renderExample(component, hostile);
    expect(html).not.toMatch(/<script|49/);
    expect(html).toContain('{{ 7*7 }}');
    expect(html.match(/&lt;script&gt;alert\(1\)&lt;\/script&gt;/g)?.length ?? 0).toBeGreaterThan(0);
    expect(html).toContain('{% raw %}');
  });

  test('every optional part has an example with it and one without', () => {
    const seen = new Map<string, Set<boolean>>();
    for (const example of examples) notePresence(example.options, '', seen);
    const macro = readFileSync(join(templatesDir, 'components', component, 'macro.njk'), 'utf8');
    for (const [condition, key] of macro.matchAll(/\{% (?:el)?if (?:\w+\.)+?(\w+)(?:\.length)? %\}/g)) {
      const states = [...seen].filter(([path]) => path.endsWith(`.${key}`)).flatMap(([, each]) => [...each]);
      expect(new Set(states), condition).toEqual(new Set([false, true]));
    }
  });

  test('has its styles beside it', () => {
    expect(existsSync(join(templatesDir, 'components', component, `${component}.css`))).toBe(true);
  });
});

/** Notes for each path, list positions left out, whether it was seen present and absent. */
function notePresence(value: unknown, path: string, seen: Map<string, Set<boolean>>): void {
  const isAbsent =
    value === null || value === '' || value === false || (Array.isArray(value) && value.length === 0);
  seen.set(path, (seen.get(path) ?? new Set()).add(!isAbsent));
  if (Array.isArray(value)) for (const item of value) notePresence(item, `${path}[]`, seen);
  else if (typeof value === 'object' && value !== null) {
    for (const [key, part] of Object.entries(value)) notePresence(part, `${path}.${key}`, seen);
  }
}
