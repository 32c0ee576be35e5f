import { quantities } from '../../../src/units/quantities.ts';
import type { Html } from '../markup.ts';
import { html, table } from '../markup.ts';

/** What every function does alike: units, blanks, ranges, elevation, errors. */
export function valuesBody(): Html {
  return html`<h2>Numbers and units</h2>
    <p>
      A plain number is read in the units of the call: US units unless the last value, <code>units</code>,
      says otherwise. Text may bring its own unit: <code>"62 psig"</code>, <code>"4.3 bar"</code>,
      <code>"1 lb 4 oz"</code>, <code>"340 g"</code>, <code>"5/16 in"</code>. A figure that could mean two
      things is not guessed. Fluid ounces are refused: refrigerant is charged by weight.
    </p>
    ${table(
      ['units', 'Plain numbers and results are in'],
      [
        [html`left out or <code>"US"</code>`, 'psig, degF, oz, lb for cylinders, ft'],
        [html`<code>"SI"</code>`, 'kPa on the gauge, degC, g, kg for cylinders, m'],
        [
          html`<code>"bar degC"</code>`,
          'US units, but pressures in bar on the gauge and temperatures in degC',
        ],
        [html`<code>"SI psia"</code>`, 'SI units, but absolute pressures in psi'],
      ],
    )}
    <h2>Gauge pressure and elevation</h2>
    <p>
      A gauge reads from the air around it. Where a pressure comes in or goes out, give the
      <code>elevation</code> of the site; left out, it is sea level. At 5000 ft an uncorrected reading is
      about 2.5 psi off. A gauge that was set to zero at the site is corrected once, by the elevation, and not
      a second time by hand.
    </p>
    <h2>Blank and zero</h2>
    <p>
      A blank cell gives a blank result. A zero is a reading. Some programs hand a blank cell over as 0, so a
      sheet of your own should ask first: <code>=IF(B2="","",OUNCE.SATTEMP("R-410A",B2))</code>.
    </p>
    <h2>Ranges</h2>
    <p>
      Where one value is meant, a range may be given: <code>=OUNCE.SATTEMP("R-410A",B2:B500)</code> gives one
      result per row. A wrong cell fails alone. Values that are meant to be a range say so in their
      description.
    </p>
    <h2>Errors</h2>
    ${table(
      ['Cell shows', 'Meaning'],
      [
        ['#VALUE!', 'A value of the wrong kind: text where a number belongs, an unknown gas, fluid ounces.'],
        ['#NUM!', 'A number outside the limits inside which the answer means something.'],
        ['#N/A', 'The answer must not be given, or there is nothing to report.'],
      ],
    )}
    <p>
      Where the program can show it, the message names the value, what was received and what is allowed.
      Google Sheets cannot put an error into one cell of a block; such a cell begins with the error's name
      instead.
    </p>
    <h2>Verdicts</h2>
    <p>
      A verdict begins with a short word for filters and colors, then a colon and the reason with its figures.
      A verdict that must not be given begins with <code>Refused</code> and says why.
    </p>
    <h2>Dates</h2>
    <p>
      A date cell, or text like <code>2026-07-14</code>. Other ways to write a date mean different days in
      different places and are not guessed.
    </p>
    <h2>Units that text may carry</h2>
    ${table(
      ['Quantity', 'US', 'SI', 'Also read'],
      Object.entries(quantities)
        .filter(([, { us }]) => us !== '')
        .map(([name, { us, metric, units }]) => [
          name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`),
          us,
          metric,
          units
            .map(({ symbol }) => symbol)
            .filter((symbol) => symbol !== us && symbol !== metric)
            .join(', '),
        ]),
    )}`;
}
