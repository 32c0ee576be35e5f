import { detailsOf } from '../../runtime/describe.ts';
import type { Example, Parameter } from '../../runtime/define.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';
import { quantities } from '../../../src/units/quantities.ts';
import { exampleFormula } from './example-formula.ts';
import { exampleResult } from './example-result.ts';
import type { Html } from '../markup.ts';
import { html, table } from '../markup.ts';
import { spell } from './spell.ts';

/** Everything there is to know about one function. */
export function functionSection(declaration: RegisteredFunction): Html {
  const { id, summary, parameters, source, examples } = declaration;
  return html`<section id="${id.toLowerCase()}">
    <h2>${id}</h2>
    <p>${summary}</p>
    <code class="call">${signature(declaration)}</code>
    <h3>Values it takes</h3>
    ${table(
      ['Value', 'What it is', 'Units and limits', 'May be left out'],
      Object.entries(parameters).map(([name, parameter]) => parameterRow(name, parameter)),
    )}
    <h3>Result</h3>
    <p>${resultText(declaration)}</p>
    <h3>Examples</h3>
    ${table(
      ['Formula', 'Gives', 'Checked against'],
      examples.map((example) => exampleRow(declaration, example)),
    )}
    <p class="source">Rests on: ${source}</p>
  </section> `;
}

/** =OUNCE.SATTEMP(refrigerant, pressure, [curve], …) */
export function signature({ id, parameters }: RegisteredFunction): string {
  const names = Object.entries(parameters).map(([name, parameter]) =>
    mayBeLeftOut(parameter) ? `[${name}]` : name,
  );
  return `=${spell(id)}(${names.join(', ')})`;
}

function parameterRow(name: string, parameter: Parameter): readonly (string | Html)[] {
  return [
    html`<code>${name}</code>`,
    parameter.description,
    detailsOf(parameter),
    mayBeLeftOut(parameter) ? 'yes' : 'no',
  ];
}

function mayBeLeftOut(parameter: Parameter): boolean {
  return parameter.optional === true || 'default' in parameter;
}

function resultText({ returns }: RegisteredFunction): string {
  const { description } = returns;
  const sentence = /[.!?]$/.test(description) ? description : `${description}.`;
  if (returns.kind === 'number') {
    const { us, metric } = quantities[returns.quantity];
    if (us === '' || us === 'money') return sentence;
    return `${sentence} In ${us === metric ? us : `${us}, in SI ${metric}`}.`;
  }
  if (returns.kind === 'date') return `${sentence} A date: format the cell as one.`;
  if (returns.kind === 'verdict')
    return `${sentence} Begins with a word that a filter can use, then the reason.`;
  if (returns.kind === 'table') {
    const headings = returns.columns.map(({ heading }) => heading).join(', ');
    return `${sentence} A block of cells with a heading row: ${headings}.`;
  }
  return sentence;
}

function exampleRow(declaration: RegisteredFunction, example: Example): readonly (string | Html)[] {
  return [
    html`<span class="formula">${exampleFormula(declaration, example, spell)}</span>`,
    exampleResult(declaration, example),
    example.source,
  ];
}
