import { commands, html } from '../markup.ts';

export const excelBody = html`<p>
    The functions come as an add-in: a small file that tells Excel where to find them. The person who looks
    after your computers puts the add-in's files on a web server of yours once; after that everybody needs
    only the small file <code>manifest.xml</code>. Nothing you type in a cell leaves Excel.
  </p>
  <h2>Once, for the person who looks after the computers</h2>
  <ol class="steps">
    <li>
      Choose an address on a web server of yours that answers with <b>https</b>, such as
      <code>https://tools.example.org/ouncewise</code>. Any server that hands out files will do.
    </li>
    <li>
      Take the folder <code>add-in</code> from the zip for Excel. In its files <code>manifest.xml</code>,
      <code>functions.html</code> and <code>functions.json</code> replace every
      <code>https://localhost:3443</code> by your address, with a text editor. Or have it done: with Node 20
      or later, in the folder of the zip for the command line, run
      ${commands(
        'node dist/command-line/ouncewise.js bundle office --base-url https://tools.example.org/ouncewise -o add-in',
      )}
    </li>
    <li>
      Copy everything in <code>add-in</code> to that address. Open
      <code>https://tools.example.org/ouncewise/guide/index.html</code> in a browser: you should see the list
      of functions.
    </li>
    <li>Hand out <code>manifest.xml</code> from that folder.</li>
  </ol>
  <p>
    In a company with Microsoft 365, the administrator can give <code>manifest.xml</code> to everybody at
    once: admin center, Settings, Integrated apps, Upload custom apps. Then the steps below are not needed.
  </p>
  <h2>Excel on the web</h2>
  <ol class="steps">
    <li>Open a workbook. On the Home tab choose <b>Add-ins</b>, then <b>More Add-ins</b>.</li>
    <li>Choose <b>My Add-ins</b>, then <b>Upload My Add-in</b>, and pick <code>manifest.xml</code>.</li>
    <li>Type <code>=OUNCE.</code> into a cell. A list of functions opens.</li>
  </ol>
  <h2>Excel on Windows</h2>
  <ol class="steps">
    <li>
      Put <code>manifest.xml</code> into a shared folder, and note its network path, such as
      <code>\\\\server\\addins</code>.
    </li>
    <li>
      In Excel choose File, Options, Trust Center, Trust Center Settings, <b>Trusted Add-in Catalogs</b>.
    </li>
    <li>
      Type the path of the shared folder into <b>Catalog Url</b>, choose <b>Add catalog</b>, tick
      <b>Show in Menu</b>, choose OK, and start Excel again.
    </li>
    <li>
      On the Home or Insert tab choose <b>Add-ins</b>, then <b>My Add-ins</b>, <b>Shared folder</b>, and pick
      Ouncewise.
    </li>
    <li>Type <code>=OUNCE.</code> into a cell. A list of functions opens.</li>
  </ol>
  <h2>Excel on a Mac</h2>
  <ol class="steps">
    <li>
      In Finder choose Go, Go to Folder, and open
      <code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code>. If there is no folder
      <code>wef</code>, make one.
    </li>
    <li>Put <code>manifest.xml</code> into it and start Excel again.</li>
    <li>On the Home or Insert tab open the small arrow beside <b>Add-ins</b> and pick Ouncewise.</li>
  </ol>
  <h2>Trying it on one computer, without a web server</h2>
  <p>
    Excel insists on https, also on your own computer. You need a certificate for <code>localhost</code> that
    this computer trusts; whoever looks after your computers can make one with the tools they already use.
    Ouncewise neither makes one nor changes what the computer trusts.
  </p>
  <ol class="steps">
    <li>
      In the folder of the zip for the command line, run
      ${commands(
        'node dist/command-line/ouncewise.js bundle office --base-url https://localhost:3443 -o add-in',
        'node dist/command-line/ouncewise.js bundle office --serve add-in --cert localhost.pem --key localhost-key.pem --port 3443',
      )}
    </li>
    <li>
      Open <code>https://localhost:3443/functions.html</code> in a browser. If it warns about the certificate,
      the computer does not trust it yet, and Excel will not either.
    </li>
    <li>Go on with the steps for your Excel above. Leave the window open while you work; Ctrl+C ends it.</li>
  </ol>
  <p>Only this computer can reach those files.</p>
  <h2>If something is wrong</h2>
  <ul>
    <li><code>#NAME?</code>: the add-in is not loaded in this Excel, or the web server cannot be reached.</li>
    <li><code>#BUSY!</code> that stays: reload the add-in, or start Excel again.</li>
    <li>
      After an update of the files Excel may use the old ones for a while: remove the add-in, clear the
      browser's cache (web), and add it again.
    </li>
    <li>
      Excel shows the reason for <code>#VALUE!</code> and <code>#N/A</code> when you point at the small
      triangle of the cell. For <code>#NUM!</code> it shows none: look up the limits of the function here.
    </li>
  </ul>
  <p>
    Custom functions need Excel 2021 or Microsoft 365. Excel on the web also loads its own
    <code>custom-functions-runtime.js</code> from Microsoft, as it does for every such add-in.
  </p>`;
