import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { emitGuide } from '../../../../functions/handbook/function-guide/emit.ts';
import { exampleFormula } from '../../../../functions/handbook/function-guide/example-formula.ts';
import { guideLink } from '../../../../functions/handbook/function-guide/links.ts';
import { html } from '../../../../functions/handbook/markup.ts';
import { spell } from '../../../../functions/hosts/office/spell.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';

const guide = emitGuide(catalogue.all(), '1.2.3');
const pages = Object.entries(guide).filter(([name]) => name.endsWith('.html'));
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

/** Addresses in a page, and the names its places have; throws where tags do not match. */
function read(page: string): { links: string[]; ids: string[]; tags: Set<string> } {
  const found = { links: [] as string[], ids: [] as string[], tags: new Set<string>() };
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    found.tags.add(name);
    for (const field of ['href', 'src'])
      if (attributes[field] !== undefined) found.links.push(attributes[field]);
    if (attributes.id !== undefined) found.ids.push(attributes.id);
  });
  // Void elements are the one thing in which these pages differ from XML.
  parser
    .write(page.replace('<!doctype html>\n', '').replace(/<(meta|link)([^>]*?)\s*\/?>/g, '<$1$2/>'))
    .close();
  return found;
}

describe('the function guide', () => {
  it.each(pages)('%s is sound, and leads to places that exist, all of them in the guide', (_, text) => {
    const { links, tags } = read(text);
    expect(tags.has('script')).toBe(false);
    for (const link of links) {
      expect(link).not.toMatch(/^(\w+:|\/)/);
      const [name = '', anchor] = link.split('#');
      expect(Object.keys(guide)).toContain(name);
      if (anchor !== undefined) expect(read(guide[name] ?? '').ids, link).toContain(anchor);
    }
  });

  it('asks nothing of the network in its style either', () => {
    expect(guide['guide.css']).not.toMatch(/url\(|@import|https?:/);
    expect(guide['guide.css']).toContain('@media print');
  });

  it.each(catalogue.all().map((declaration) => ({ id: declaration.id, declaration })))(
    'tells everything about $id',
    ({ declaration }) => {
      const link = guideLink(declaration);
      const [name = '', anchor = ''] = link.split('#');
      const section = guide[name]?.split('<section ').find((part) => part.startsWith(`id="${anchor}"`)) ?? '';
      const escaped = (text: string): string => html`${text}`.html;
      expect(section).toContain(escaped(declaration.summary));
      expect(section).toContain(escaped(declaration.source));
      for (const [parameter, { description }] of Object.entries(declaration.parameters)) {
        expect(section, parameter).toContain(`<code>${parameter}</code>`);
        expect(section, parameter).toContain(escaped(description));
      }
      for (const example of declaration.examples) {
        expect(section).toContain(escaped(exampleFormula(declaration, example, spell)));
        expect(section).toContain(escaped(example.source));
      }
      expect(guide['index.html']).toContain(`href="${link}"`);
    },
  );

  it('has the five cautions in their order on every page of functions', () => {
    const families = new Set(catalogue.all().map(({ family }) => `${family}.html`));
    for (const name of [...families, 'index.html']) {
      const page = guide[name] ?? '';
      const places = [
        'A2L or A3',
        'Air and ice before gas',
        'is weighed',
        'off by a little',
        'venting is unlawful',
      ].map((words) => page.indexOf(words));
      expect(
        places.every((place) => place > 0),
        name,
      ).toBe(true);
      expect(
        [...places].sort((a, b) => a - b),
        name,
      ).toEqual(places);
    }
  });

  it('shows results with units and errors with their reason', () => {
    const page = oneLine(guide['refrigerant.html'] ?? '');
    expect(page).toMatch(/<span class="formula">=OUNCE\.SATTEMP\([^<]*<\/span><\/td><td>[-\d.]+ degF</);
    expect(page).toMatch(/<span class="error">#NUM!<\/span> \w+ must be/);
  });

  it('shows one command to a line, as it is typed', () => {
    const lines = pages
      .filter(([name]) => name.startsWith('install'))
      .flatMap(([, text]) =>
        [...text.matchAll(/<code class="call">([^<]*)<\/code>/g)].map(([, line]) => line ?? ''),
      );
    expect(lines.length).toBeGreaterThan(4);
    for (const line of lines) {
      expect(line).toMatch(/^(npm |node dist\/command-line\/ouncewise\.js |=OUNCE\.)\S/);
      expect(line).not.toMatch(/\n|&amp;&amp;|.node |.npm /);
    }
  });

  it('has an install page for each host', () => {
    for (const host of ['excel', 'google-sheets', 'libreoffice', 'onlyoffice', 'databases']) {
      expect(guide['install.html']).toContain(`install-${host}.html`);
      expect(guide[`install-${host}.html`]).toContain('class="steps"');
    }
  });
});

describe('a formula made from an example', () => {
  const glide = catalogue.get('GLIDE');
  const written = (given: Record<string, never>): string =>
    exampleFormula(glide, { arguments: given, gives: 0, source: 'definition' }, spell);

  it('leaves places empty in between and nothing at the end', () => {
    expect(written({ refrigerant: 'R-32', pressure: 120 } as never)).toBe('=OUNCE.GLIDE("R-32",120)');
    expect(written({ refrigerant: 'R-32', pressure: 120, units: 'SI' } as never)).toBe(
      '=OUNCE.GLIDE("R-32",120,,"SI")',
    );
  });

  it('writes quotes, truths, dates and ranges as a sheet wants them', () => {
    expect(written({ refrigerant: '1/2"', pressure: true } as never)).toBe('=OUNCE.GLIDE("1/2""",TRUE)');
    expect(
      written({
        refrigerant: new Date(2026, 6, 14),
        pressure: [
          [1, ''],
          ['a', 2],
        ],
      } as never),
    ).toBe('=OUNCE.GLIDE(DATE(2026,7,14),{1,"";"a",2})');
  });
});

describe('pieces of HTML', () => {
  it('escape text and keep pieces', () => {
    expect(html`<p>${'<b> & "c"'}${html`<i>${1}</i>`}${[html`x`, html`y`]}</p>`.html).toBe(
      '<p>&lt;b&gt; &amp; &quot;c&quot;<i>1</i>xy</p>',
    );
  });
});
