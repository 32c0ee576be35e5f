import { html } from '../markup.ts';

export const onlyofficeBody = html`<p>
    You need ONLYOFFICE 8.2 or later. The functions are kept in the document you add them to.
  </p>
  <ol class="steps">
    <li>
      Open the file <code>ouncewise-onlyoffice.js</code> (it is in the zip for ONLYOFFICE) with a text editor,
      select everything and copy it.
    </li>
    <li>Open your spreadsheet in ONLYOFFICE. On the <b>View</b> tab choose <b>Macros</b>.</li>
    <li>In the part <b>Custom functions</b> choose <b>+</b>. A new entry with a few lines opens.</li>
    <li>Select those lines, paste over them, and choose <b>Save</b>.</li>
    <li>Type <code>=OUNCE_SATTEMP("R-22",68.5)</code> into a cell. It shows 40 or very nearly.</li>
  </ol>
  <h2>Errors</h2>
  <p>
    ONLYOFFICE shows an error value without the reason. To read the reason, look up the limits of the function
    in this guide.
  </p>
  <h2>Update and removal</h2>
  <p>Open the same entry and paste the new file over the old one, or delete the entry.</p>
  <p class="quiet">
    These steps were written from the maker's documentation; the library itself is tested outside ONLYOFFICE.
  </p>`;
