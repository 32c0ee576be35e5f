import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { commands } from '../../../functions/hosts/command-line/commands/index.ts';
import type { Reader } from '../../../functions/handbook/guides/render.ts';
import { readers, renderGuides } from '../../../functions/handbook/guides/render.ts';

const source = join(import.meta.dirname, '../../../manifest/guides');
const texts = Object.fromEntries(
  readers.map((reader) => [reader, readFileSync(join(source, `${reader}.md`), 'utf8')]),
) as Record<Reader, string>;
const pages = renderGuides(texts, '1.2.3');

describe('guides with pictures', () => {
  test('the pictures are small: 1.5 MB in all', () => {
    const sizes = readdirSync(join(source, 'pictures')).map(
      (name) => statSync(join(source, 'pictures', name)).size,
    );
    expect(sizes.length).toBeGreaterThan(0);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(1.5e6);
  });

  test('every picture is shown somewhere, with words for those who do not see it', () => {
    const shown = readers.flatMap((reader) =>
      [...texts[reader].matchAll(/!\[([^\]]*)\]\(pictures\/([^)]+)\)/g)].map(([, words = '', file = '']) => ({
        words,
        file,
      })),
    );
    for (const { words, file } of shown) {
      expect(words.length, file).toBeGreaterThan(20);
      const picture = readFileSync(join(source, 'pictures', file));
      expect(picture.subarray(1, 4).toString(), file).toBe('PNG');
    }
    expect([...new Set(shown.map(({ file }) => file))].sort()).toEqual(
      readdirSync(join(source, 'pictures')).sort(),
    );
  });

  test.each(readers)('the guide for the %s begins with the dangers', (reader) => {
    const [head = ''] = texts[reader].split('\n## ');
    for (const danger of [/burn/, /roof/, /certified/i, /(let|go)\s(>\s)?into the air/, /local codes/i]) {
      expect(head, String(danger)).toMatch(danger);
    }
    expect(texts[reader]).toMatch(/## What (each|the) answer rests on/);
    expect(texts[reader]).toContain('## What is refused, and why');
    expect(texts[reader]).toContain('## Limits');
  });

  test('pressure and electricity are in the guide of the one who meets them', () => {
    const [head = ''] = texts.technician.split('\n## ');
    for (const danger of [/pressure/, /power/, /capacitors/, /goggles/]) expect(head).toMatch(danger);
  });

  test('commands that are shown exist', () => {
    for (const reader of readers) {
      for (const [, name = ''] of texts[reader].matchAll(/^ouncewise (\w+)|`ouncewise (\w+)/gm)) {
        if (name !== '') expect(Object.keys(commands)).toContain(name);
      }
    }
    expect(texts.office).toMatch(/^ouncewise gather/m);
  });

  test('links lead to guides that are there, on the page as in the text', () => {
    for (const reader of readers) {
      for (const [, target = ''] of texts[reader].matchAll(/[^!]\[[^\]]+\]\(([^)]+)\)/g)) {
        expect(existsSync(join(source, target)), target).toBe(true);
      }
      const links = [...(pages[`${reader}.html`] ?? '').matchAll(/<a href="([^"]+)"/g)].map(
        ([, to = '']) => to,
      );
      expect(links.length).toBeGreaterThan(0);
      for (const link of links) expect(pages, link).toHaveProperty([link]);
    }
  });

  test('a page runs nothing and fetches nothing from elsewhere', () => {
    for (const [name, page] of Object.entries(pages)) {
      expect(page, name).not.toMatch(/<script|https?:|@import|url\(/);
      if (name.endsWith('.html')) {
        expect(page).toMatch(/^<!doctype html>\s*<html lang="en">/);
        expect(page).toContain('Ouncewise 1.2.3');
        expect(page.match(/<h1>/g)).toHaveLength(1);
      }
    }
  });

  test('markup in a text stays text', () => {
    const page = renderGuides({ ...texts, office: 'a <b>bold</b> <script>x</script> word' }, '1')[
      'office.html'
    ];
    expect(page).toContain('&lt;script&gt;');
    expect(page).not.toContain('<script>');
  });
});
