import { describe, expect, test } from 'vitest';
import { templateEnvironment } from '../../src/render/environment.ts';
import { plainView, strictView } from '../../src/render/strict-view.ts';

const templatesDir = new URL('../../templates', import.meta.url).pathname;
const environment = templateEnvironment(templatesDir, new Map()).nunjucks;
const data = { title: 'Walk', note: null, rows: [{ cells: ['a', 'b'] }], count: 0 };
const view = strictView(data, 'job maple-court, document office/work-order');
const render = (template: string): string => environment.renderString(template, { view });

describe('strictView', () => {
  test.each([
    ['{{ view.titel }}', 'view.titel'],
    ['{% if view.titel %}x{% endif %}', 'view.titel'],
    ['{% for row in view.row %}x{% endfor %}', 'view.row'],
    ['{{ view.titel | upper }}', 'view.titel'],
    ['{{ view.rows[0].cell }}', 'view.rows[0].cell'],
    ['{{ view.rows[1].cells }}', 'view.rows[1]'],
    ['{{ view.rows[0].cells[2] }}', 'view.rows[0].cells[2]'],
    ['{% for row in view.rows %}{{ row.note }}{% endfor %}', 'view.rows[0].note'],
    ['{{ view.rows.lenght }}', 'view.rows.lenght'],
  ])('%s names job, document and path', (template, path) => {
    expect(() => render(template)).toThrow(
      `job maple-court, document office/work-order: the template asks for ${path}, which does not exist`,
    );
  });

  test('what exists is there: keys, rows, positions, lengths, null on purpose', () => {
    const template =
      '{{ view.title }} {{ view.rows.length }} {{ view.rows[0].cells | join("+") }}{% if view.note %}never{% endif %}';
    expect(render(template)).toBe('Walk 1 a+b');
  });

  test('printing what is absent or no text at all is refused', () => {
    expect(() => render('{{ view.note }}')).toThrow('null or undefined');
    expect(() => render('{{ view.rows[0] }}')).toThrow('view.rows[0].toString');
  });

  test('nothing can be changed through it', () => {
    expect(() => Object.assign(view, { title: 'Drive' })).toThrow('must not change view.title');
    expect(data.title).toBe('Walk');
  });

  test('plainView gives back the data, which may be asked for optional keys', () => {
    expect(plainView(view)).toBe(data);
    expect(plainView(view.rows)).toBe(data.rows);
    expect(plainView(data)).toBe(data);
    expect(plainView('text')).toBe('text');
  });
});
