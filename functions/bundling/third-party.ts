import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ShippedPackage } from './shipped-packages.js';

/** THIRD-PARTY.txt: the licence of every library inside the built files, in its own words. */
export function thirdPartyText(root: string, packages: readonly ShippedPackage[]): string {
  const list = packages.map(({ name, version, licence }) => `${name} ${version}: ${licence}`);
  const parts = packages.map(
    ({ name, version, licence }) =>
      `${line}\n${name} ${version} (${licence})\n${line}\n\n${words(root, name)}`,
  );
  return [
    'Libraries inside the built files of Ouncewise, and their licences.',
    '',
    ...list,
    '',
    ...parts,
    '',
  ].join('\n');
}

const line = '-'.repeat(100);

function words(root: string, name: string): string {
  const folder = join(root, 'node_modules', name);
  const files = readdirSync(folder).filter((file) => /^(licen[cs]e|notice|copying)/i.test(file));
  const texts = files.sort().map((file) => tidy(readFileSync(join(folder, file), 'utf8')));
  if (texts.length > 0) return `${texts.join('\n\n')}\n`;
  return `${withoutFile(folder, name)}\n`;
}

/** Some packages leave the text out. What they do say is repeated, with the licence they name. */
function withoutFile(folder: string, name: string): string {
  const readme = readFileSync(join(folder, 'README.md'), 'utf8');
  const [, inReadme] = /\nLICENSE \(MIT\)\n-+\n([\s\S]+)/.exec(readme) ?? [];
  if (inReadme !== undefined) return tidy(inReadme);
  const { author, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    author?: string | { readonly name: string };
    license: string;
  };
  const general = generalTexts[license];
  const holder = typeof author === 'string' ? author : author?.name;
  if (general === undefined || holder === undefined)
    throw new Error(`${name} comes without its licence text`);
  return `Copyright (c) ${holder.replace(/\s*<.*>/, '')}\n\n${general}`;
}

function tidy(text: string): string {
  return text
    .split(/\r?\n/)
    .map((row) => row.trimEnd())
    .join('\n')
    .trim();
}

const noWarranty = {
  MIT: `THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE
WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR
COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE,
ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`,
  ISC: `THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT,
OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF
CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`,
};

const generalTexts: Readonly<Record<string, string>> = {
  MIT: `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated
documentation files (the "Software"), to deal in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to
whom the Software is furnished to do so, subject to the following conditions: The above copyright notice and this permission
notice shall be included in all copies or substantial portions of the Software.

${noWarranty.MIT}`,
  ISC: `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted,
provided that the above copyright notice and this permission notice appear in all copies.

${noWarranty.ISC}`,
};
