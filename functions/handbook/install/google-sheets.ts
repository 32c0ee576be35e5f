import { html } from '../markup.ts';

export const googleSheetsBody = html`<p>
    In Google Sheets the functions belong to one spreadsheet. Copy a spreadsheet that has them and the copy
    has them, too.
  </p>
  <ol class="steps">
    <li>
      Open the file <code>ouncewise.gs</code> (it is in the zip for Google Sheets) with a text editor, select
      everything and copy it. It is one long file; that is as it should be.
    </li>
    <li>
      Open your spreadsheet. Choose <b>Extensions</b>, then <b>Apps Script</b>. A page with an editor opens.
    </li>
    <li>
      At the left, beside <b>Files</b>, choose <b>+</b>, then <b>Script</b>, and call it
      <code>ouncewise</code>.
    </li>
    <li>Select the few lines that are in the new file, paste over them, and save (Ctrl+S).</li>
    <li>
      At the left choose the gear, <b>Project Settings</b>, and check that the time zone is the one of your
      spreadsheet (File, Settings). Otherwise a date may be taken for the day before.
    </li>
    <li>
      Go back to the spreadsheet and type <code>=OUNCE_SATTEMP("R-22",68.5)</code> into a cell. After a moment
      it shows 40 or very nearly.
    </li>
  </ol>
  <p>
    No permission is asked for, because the functions read nothing but the cells you give them and send
    nothing.
  </p>
  <h2>Long lists</h2>
  <p>
    Each formula is one trip to Google's computers. For a long list give the whole column at once:
    <code>=OUNCE_SATTEMP("R-410A",B2:B500)</code> fills one result per row from a single formula, and is far
    quicker than 499 formulas. One formula may run for 30 seconds.
  </p>
  <h2>Errors</h2>
  <p>
    A single formula that cannot answer shows <code>#ERROR!</code>; point at the cell to read why. Inside a
    block of results such a cell begins with <code>#VALUE!</code>, <code>#NUM!</code> or <code>#N/A</code>,
    then the reason.
  </p>
  <h2>Update and removal</h2>
  <p>
    To update, paste the new file over the old one. To remove, delete the file <code>ouncewise</code> from the
    Apps Script page; cells then show <code>#NAME?</code>.
  </p>`;
