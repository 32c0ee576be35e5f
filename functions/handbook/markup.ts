/** Text inside XML or HTML, attributes included. */
export function escapeMarkup(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}

/** A piece of HTML that is already safe to put into a page. */
export interface Html {
  readonly html: string;
}

type Part = string | number | Html | readonly Html[];

/** HTML with values put in: text is escaped, pieces of HTML are not. */
export function html(words: TemplateStringsArray, ...parts: readonly Part[]): Html {
  let page = words[0] ?? '';
  parts.forEach((part, index) => {
    page += partText(part) + (words[index + 1] ?? '');
  });
  return { html: page };
}

function partText(part: Part): string {
  if (typeof part === 'string') return escapeMarkup(part);
  if (typeof part === 'number') return String(part);
  if (Array.isArray(part)) return (part as readonly Html[]).map((piece) => piece.html).join('');
  return (part as Html).html;
}

/** A table with a heading row. */
export function table(headings: readonly string[], rows: readonly (readonly (string | Html)[])[]): Html {
  const cells = (row: readonly (string | Html)[]): Html[] => row.map((cell) => html`<td>${cell}</td>`);
  return html`<div class="wide">
    <table>
      <thead>
        <tr>
          ${headings.map((heading) => html`<th scope="col">${heading}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) =>
            html`<tr>
              ${cells(row)}
            </tr> `,
        )}
      </tbody>
    </table>
  </div>`;
}

/** Commands to type, one below the other. Put in as values: what is written as HTML is reflowed by the formatter. */
export function commands(...lines: readonly string[]): Html {
  return html`${lines.map((line) => html`<code class="call">${line}</code>`)}`;
}
