import { Marked } from 'marked';
import { escapeMarkup } from '../markup.ts';
import { styleSheet } from '../style.ts';
import { frame } from './frame.ts';

/** Who a guide is for; also the names of the files in manifest/guides. */
export const readers = ['technician', 'office', 'estimator'] as const;
export type Reader = (typeof readers)[number];

const titles: Readonly<Record<Reader, string>> = {
  technician: 'Guide for the technician',
  office: 'Guide for the office',
  estimator: 'Guide for the estimator',
};

const style = `${styleSheet}img { max-width: 100%; height: auto; border: 1px solid var(--line); margin: .6rem 0; }
blockquote { border-left: 4px solid #c9892b; background: #fdf7ec; margin: 1rem 0; padding: .4rem 1rem; }
`;

/** The guides as pages: file name → text. Links to the other guides lead to pages, too. */
export function renderGuides(
  texts: Readonly<Record<Reader, string>>,
  version: string,
): Readonly<Record<string, string>> {
  const pages = readers.map((reader) => {
    const body = pageBody(texts[reader]);
    const title = titles[reader];
    return [`${reader}.html`, frame({ title, body, version, style: { file: 'guides.css' } })] as const;
  });
  return { 'guides.css': style, ...Object.fromEntries(pages) };
}

const marked = new Marked({
  renderer: {
    // Only what was written as Markdown becomes markup.
    html: ({ text }) => escapeMarkup(text),
    link({ href, tokens }) {
      return `<a href="${escapeMarkup(href.replace(/\.md(?=$|#)/, '.html'))}">${this.parser.parseInline(tokens)}</a>`;
    },
    table({ header, rows }) {
      const cells = (row: typeof header, tag: string): string =>
        row.map(({ tokens }) => `<${tag}>${this.parser.parseInline(tokens)}</${tag}>`).join('');
      const body = rows.map((row) => `<tr>${cells(row, 'td')}</tr>`).join('\n');
      return `<div class="wide"><table><thead><tr>${cells(header, 'th')}</tr></thead><tbody>\n${body}\n</tbody></table></div>\n`;
    },
  },
});

function pageBody(text: string): string {
  return marked.parse(text, { async: false });
}
