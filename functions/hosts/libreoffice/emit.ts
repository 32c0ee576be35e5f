import { describeParameter } from '../../runtime/describe.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';
import { spell } from './spell.ts';

/**
 * The type library as IDL text. Every parameter is an `any`: Calc then hands over a number, a text, a range or nothing.
 * Parameter names are numbered, because trade words such as `in` are reserved there; users see the names from `emitConfiguration`.
 */
export function emitTypeLibrary(functions: readonly RegisteredFunction[]): string {
  const methods = functions.map((declaration) => {
    const { id, parameterNames } = declaration;
    const parameters = parameterNames.map((_, index) => `[in] any ${parameterKey(index)}`).join(', ');
    // The space in `> >` is needed by the reader of IDL.
    const result = givesText(declaration) ? 'any' : 'sequence<sequence<any> >';
    return `  ${result} ${id}(${parameters});\n`;
  });
  return `module ouncewise { module libreoffice { interface XOunce {\n${methods.join('')}}; }; };\n`;
}

/**
 * Calc compares texts by their place in its pool of texts, and forgets to put there what comes in rows of cells: a cell
 * that shows "Ready" would not be equal to "Ready". So a function that can give text is declared as `any` and hands a
 * single result over plainly; its ranges take another way, see RangeResult in ouncewise_addin.py. Numbers come in rows of cells.
 */
function givesText({ returns }: RegisteredFunction): boolean {
  return returns.kind !== 'number' && returns.kind !== 'date' && returns.kind !== 'yesNo';
}

/** CalcAddIns.xcu: names and help that the function wizard shows. */
export function emitConfiguration(functions: readonly RegisteredFunction[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>
<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="CalcAddIns" oor:package="org.openoffice.Office">
<node oor:name="AddInInfo">
<node oor:name="OUNCE" oor:op="replace">
<node oor:name="AddInFunctions">
${functions.map(functionNode).join('')}</node>
</node>
</node>
</oor:component-data>
`;
}

function functionNode(declaration: RegisteredFunction): string {
  const { id, parameters } = declaration;
  const help = Object.entries(parameters).map(
    ([name, parameter], index) => `<node oor:name="${parameterKey(index)}" oor:op="replace">
${localized('DisplayName', name)}${localized('Description', describeParameter(parameter))}</node>
`,
  );
  return `<node oor:name="${id}" oor:op="replace">
${localized('DisplayName', spell(id))}${localized('Description', describeFunction(declaration))}<prop oor:name="Category"><value>Add-In</value></prop>
${localized('CompatibilityName', spell(id))}<node oor:name="Parameters">
${help.join('')}</node>
</node>
`;
}

function localized(property: string, text: string): string {
  return `<prop oor:name="${property}"><value xml:lang="en">${escapeXml(text)}</value></prop>\n`;
}

/** Calc sorts parameters by this key, so it counts in two digits. */
function parameterKey(index: number): string {
  return `p${String(index + 1).padStart(2, '0')}`;
}

function describeFunction({ summary, returns }: RegisteredFunction): string {
  return `${summary} Result: ${returns.description}`;
}

/** functions.json: what the Python component answers when Calc asks it directly. */
export function emitFunctionTable(functions: readonly RegisteredFunction[]): string {
  const table = Object.fromEntries(
    functions.map((declaration) => [
      declaration.id,
      {
        summary: describeFunction(declaration),
        text: givesText(declaration),
        parameters: Object.entries(declaration.parameters).map(([name, parameter]) => ({
          name,
          description: describeParameter(parameter),
        })),
      },
    ]),
  );
  return `${JSON.stringify(table, undefined, 1)}\n`;
}

function escapeXml(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}
