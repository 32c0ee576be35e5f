import { html } from '../markup.ts';

export const libreofficeBody = html`<p>
    You need LibreOffice 7.4 or later and Node 20 or later on the same computer. Node is a free program that
    does the calculating; LibreOffice starts and ends it by itself.
  </p>
  <ol class="steps">
    <li>
      Install Node if it is not there: from the package manager of your system, or with the installer of the
      Node project.
    </li>
    <li>
      Close LibreOffice. Double-click <code>ouncewise.oxt</code> (it is in the zip for LibreOffice), or in
      LibreOffice choose <b>Tools</b>, <b>Extensions</b> (older: Extension Manager), <b>Add</b>, and pick the
      file.
    </li>
    <li>
      Start LibreOffice Calc again and type <code>=OUNCE.SATTEMP("R-22";68.5)</code> into a cell. It shows 40
      or very nearly. Whether values are parted by <code>;</code> or <code>,</code> depends on your settings;
      both are understood in files.
    </li>
    <li>
      The function wizard (the fx beside the formula bar) lists the functions in the category
      <b>Add-In</b> with their help.
    </li>
  </ol>
  <h2>If cells show #VALUE! at once</h2>
  <p>
    LibreOffice did not find Node. On some desktops programs that were started by a mouse click do not know
    where Node is. Use the add-in's own menu to choose the Node program.
  </p>
  <h2>Blank cells</h2>
  <p>
    LibreOffice hands a single blank cell over as 0. In sheets of your own ask first:
    <code>=IF(B2="";"";OUNCE.SATTEMP("R-410A";B2))</code>. Our sample workbooks do.
  </p>
  <h2>Old values after opening a file</h2>
  <p>
    LibreOffice keeps the results stored in a file unless told otherwise: Tools, Options, LibreOffice Calc,
    Formula, <b>Recalculation on File Load</b>. Ctrl+Shift+F9 recalculates everything now.
  </p>
  <h2>Workbooks</h2>
  <p>
    A workbook for Excel and one for LibreOffice store the functions under different names. Use the one that
    is made for your program; the name of the file says which.
  </p>
  <h2>Removal</h2>
  <p>Tools, Extensions, Ouncewise, Remove. Cells then show <code>#NAME?</code>.</p>`;
