import { describe, expect, test } from 'vitest';
import { isLocal } from '../../src/print/closed-page.ts';

describe('isLocal', () => {
  test.each(['file:///work/a.html', 'file:///C:/work/a.html', 'data:font/woff2;base64,AA=='])(
    '%s may be read',
    (url) => {
      expect(isLocal(url)).toBe(true);
    },
  );

  test.each([
    'http://127.0.0.1/',
    'https://example.com/a.css',
    'file://server/share/a.png',
    'ws://example.com/',
    'blob:null/1',
    'chrome://crash/',
  ])('%s may not', (url) => {
    expect(isLocal(url)).toBe(false);
  });
});
