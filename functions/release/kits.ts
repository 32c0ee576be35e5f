import type { Html } from '../handbook/markup.ts';
import { commands, html } from '../handbook/markup.ts';

/** One zip of the release. */
export interface Kit {
  readonly name: string;
  readonly title: string;
  /** One line for the list of zips. */
  readonly what: string;
  /** Page of the function guide that tells how to install, or steps written here. */
  readonly install: { readonly page: string } | { readonly steps: Html };
  /** Pairs of a path in the repository (a file or a folder) and where it goes in the zip. */
  readonly contents: readonly (readonly [from: string, to: string])[];
  /** Sample workbooks that go along. */
  readonly workbooks?: 'for LibreOffice' | 'for Excel' | 'all';
  readonly withGuides?: true;
  readonly withFunctionGuide?: true;
}

export const kits: readonly Kit[] = [
  {
    name: 'no-add-in',
    title: 'The visit sheet: nothing to install',
    what: 'one visit in plain formulas, for any spreadsheet program and for phones',
    install: {
      steps: html`<ol class="steps">
        <li>
          Open <code>visit-sheet.xlsx</code>, or <code>visit-sheet-si.xlsx</code> in SI units. Nothing to
          install.
        </li>
        <li>Save it under a name of the visit. Fill in the unit, then set 1 from the top down.</li>
        <li>
          The answer stands on top. Where it says that the functions can tell, it does not know: add nothing
          on its word.
        </li>
      </ol>`,
    },
    contents: [
      ['sample-workbooks/visit-sheet.xlsx', 'visit-sheet.xlsx'],
      ['sample-workbooks/visit-sheet-si.xlsx', 'visit-sheet-si.xlsx'],
    ],
    withGuides: true,
  },
  {
    name: 'libreoffice',
    title: 'Ouncewise in LibreOffice Calc',
    what: 'extension for LibreOffice Calc, with the workbooks and the guides',
    install: { page: 'install-libreoffice.html' },
    contents: [['dist/libreoffice/ouncewise.oxt', 'ouncewise.oxt']],
    workbooks: 'for LibreOffice',
    withGuides: true,
  },
  {
    name: 'excel',
    title: 'Ouncewise in Excel',
    what: 'add-in files for your own web address, with the workbooks and the guides',
    install: { page: 'install-excel.html' },
    contents: [['dist/office', 'add-in']],
    workbooks: 'for Excel',
    withGuides: true,
  },
  {
    name: 'google-sheets',
    title: 'Ouncewise in Google Sheets',
    what: 'one script to paste',
    install: { page: 'install-google-sheets.html' },
    contents: [['dist/apps-script', '.']],
    withFunctionGuide: true,
  },
  {
    name: 'onlyoffice',
    title: 'Ouncewise in ONLYOFFICE',
    what: 'one script to paste',
    install: { page: 'install-onlyoffice.html' },
    contents: [['dist/onlyoffice/ouncewise-onlyoffice.js', 'ouncewise-onlyoffice.js']],
    withFunctionGuide: true,
  },
  {
    name: 'sql',
    title: 'Ouncewise in databases',
    what: 'definitions for engines that run JavaScript',
    install: { page: 'install-databases.html' },
    contents: [['dist/sql', 'sql']],
    withFunctionGuide: true,
  },
  {
    name: 'page',
    title: 'The worksheet page',
    what: 'static files for a web server; works without network after the first visit',
    install: {
      steps: html`<p>
          A browser opens the page from a web address, not from a file. Any server that hands out files will
          do, on the same computer or in your company. What is typed stays in the browser.
        </p>
        <ol class="steps">
          <li>Unpack this zip.</li>
          <li>
            On one computer, open a terminal in the folder <code>page</code> and run, for instance,
            ${commands('python3 -m http.server --bind 127.0.0.1 8080')} then open
            <code>http://127.0.0.1:8080/</code> in a browser. Whoever has Node takes the zip for the command
            line instead: its <code>ouncewise start</code> serves the page.
          </li>
          <li>
            For several people, copy the folder <code>page</code> to a web server that answers with
            <b>https</b> and open its address.
          </li>
          <li>
            Open the page once with the network on. From then on it opens without one; the browser keeps the
            log that is being worked on. Save it as a file at the end of a visit all the same.
          </li>
        </ol>`,
    },
    contents: [['dist/page', 'page']],
    withGuides: true,
    withFunctionGuide: true,
  },
  {
    name: 'workbooks',
    title: 'The sample workbooks',
    what: 'visit log, fleet summary, repair or replace, function list; for LibreOffice and for Excel',
    install: {
      steps: html`<ol class="steps">
        <li>
          Install the functions first: the zip for LibreOffice or the one for Excel tells how. Without them
          the workbooks show the values that were saved.
        </li>
        <li>
          Open the file that is made for your program: names that end in <code>-excel</code> are for Excel,
          the others for LibreOffice, the worksheet page and the command line.
        </li>
        <li>Save it under a name of your own before you type. Inputs are the pale cells.</li>
      </ol>`,
    },
    contents: [],
    workbooks: 'all',
    withGuides: true,
  },
  {
    name: 'command-line',
    title: 'The command line and the worksheet page on this computer',
    what: 'everything that Node runs: start, call, check, gather, recalc, quote, ledger',
    install: {
      steps: html`<p>You need Node 20 or later on the computer. Nothing else is installed or fetched.</p>
        <ol class="steps">
          <li>Unpack this zip and open a terminal in its folder.</li>
          <li>
            On Linux or a Mac run the first line, on Windows the second. Both print the sample log and the
            address of the worksheet page: ${commands('./ouncewise start', 'ouncewise.cmd start')}
          </li>
          <li>
            See what else there is: ${commands('./ouncewise --help', './ouncewise call SATTEMP R-410A 62')}
          </li>
          <li>
            Only for ledgers of millions of rows: run ${commands('npm install --no-save @duckdb/node-api')} in
            the same folder.
          </li>
        </ol>
        <p>
          With npm, the file of the release that ends in <code>.tgz</code> gives the same commands in a
          project of yours, and the calculation package for programs:
        </p>
        ${commands('npm install ./ouncewise-VERSION.tgz', 'npx ouncewise call SATTEMP R-410A 62')}`,
    },
    contents: [],
    withGuides: true,
  },
];
