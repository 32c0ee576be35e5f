import type { Html } from '../markup.ts';
import { html } from '../markup.ts';
import { databaseBody } from './databases.ts';
import { excelBody } from './excel.ts';
import { googleSheetsBody } from './google-sheets.ts';
import { libreofficeBody } from './libreoffice.ts';
import { onlyofficeBody } from './onlyoffice.ts';

interface InstallPage {
  readonly title: string;
  readonly body: Html;
}

const hosts: Readonly<Record<string, InstallPage>> = {
  'install-excel.html': { title: 'Install in Excel', body: excelBody },
  'install-google-sheets.html': { title: 'Install in Google Sheets', body: googleSheetsBody },
  'install-libreoffice.html': { title: 'Install in LibreOffice Calc', body: libreofficeBody },
  'install-onlyoffice.html': { title: 'Install in ONLYOFFICE', body: onlyofficeBody },
  'install-databases.html': { title: 'Use in databases and scripts', body: databaseBody },
};

const indexBody = html`<p>
    Pick the program you work in. The functions and their results are the same everywhere.
  </p>
  <ul>
    ${Object.entries(hosts).map(([name, { title }]) => html`<li><a href="${name}">${title}</a></li> `)}
  </ul>
  <p>To see that it works, type this into an empty cell; it shows 40 or very nearly:</p>
  <p><code class="call">=OUNCE.SATTEMP("R-22",68.5)</code></p>
  <p>In Google Sheets and ONLYOFFICE the same is spelled <code>=OUNCE_SATTEMP("R-22",68.5)</code>.</p>`;

/** Step by step for people in an office, one page for each program. */
export const installPages: Readonly<Record<string, InstallPage>> = {
  'install.html': { title: 'Install', body: indexBody },
  ...hosts,
};
