import { commands, html } from '../markup.ts';

export const databaseBody = html`<p>
    The same functions can be called from a terminal, from a script, and from database engines. Names are
    spelled <code>OUNCE_SATTEMP</code> in SQL.
  </p>
  <h2>From a terminal</h2>
  <ol class="steps">
    <li>You need Node 20 or later. Unpack the zip for the command line and open a terminal in its folder.</li>
    <li>
      List the functions, then call one:
      ${commands('node dist/command-line/ouncewise.js functions', 'node dist/command-line/ouncewise.js call --help')}
    </li>
  </ol>
  <h2>From a database</h2>
  <p>
    The folder <code>sql</code> of the zip for databases has a file of definitions for each kind of engine,
    with the steps at its top. Engines that run another program for each batch of rows can use
    <code>ouncewise call --stream</code>: one question per line in, one answer per line out.
  </p>`;
