import { cautions } from '../cautions.ts';
import type { Html } from '../markup.ts';
import { html } from '../markup.ts';

/** A whole page of the guide: one frame, no script, nothing fetched from elsewhere. */
export function page(options: {
  readonly title: string;
  readonly body: Html;
  readonly version: string;
}): string {
  const { title, body, version } = options;
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title} · Ouncewise function guide</title>
        <link rel="stylesheet" href="guide.css" />
      </head>
      <body>
        <nav>
          <a href="index.html">All functions</a><a href="values.html">How values are read</a
          ><a href="install.html">Install</a>
        </nav>
        <main>
          <h1>${title}</h1>
          ${body}
        </main>
        <footer><p>${cautions.at(-1) ?? ''} Ouncewise ${version}.</p></footer>
      </body>
    </html> `.html;
}
