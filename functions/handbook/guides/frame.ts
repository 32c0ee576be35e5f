import { html } from '../markup.ts';

export interface Framed {
  readonly title: string;
  /** Safe HTML. */
  readonly body: string;
  readonly version: string;
  /** The name of the style sheet beside the page, or its text when the page stands alone. */
  readonly style: { readonly file: string } | { readonly text: string };
}

/** A page to be opened from a folder: no script, nothing fetched from elsewhere. */
export function frame({ title, body, version, style }: Framed): string {
  const look =
    'file' in style
      ? html`<link rel="stylesheet" href="${style.file}" />`
      : { html: `<style>\n${style.text}</style>` };
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title} · Ouncewise</title>
        ${look}
      </head>
      <body>
        <main>${{ html: body }}</main>
        <footer>
          <p>
            Ouncewise ${version}. It does not replace training, the maker's instructions or the law. Opening a
            refrigerant circuit is work for a certified technician; venting is unlawful.
          </p>
        </footer>
      </body>
    </html> `.html;
}
