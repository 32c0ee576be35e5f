/** What surrounds the caret in a formula being typed. */
export interface FormulaContext {
  /** The name being typed, and where it begins. */
  readonly word: string;
  readonly wordStart: number;
  /** The innermost call that is open at the caret, and which argument the caret is in. */
  readonly call: { readonly name: string; readonly argument: number } | undefined;
  /** A reference may stand at the caret: a cell that is pointed at goes there. */
  readonly takesReference: boolean;
}

export function formulaContext(text: string, caret: number): FormulaContext | undefined {
  if (!text.startsWith('=')) return undefined;
  const before = text.slice(1, caret);
  const open: { name: string; argument: number }[] = [];
  let quote = '';
  let bracket = 0;
  for (let at = 0; at < before.length; at++) {
    const letter = before[at] as string;
    if (quote !== '') {
      if (letter === quote) quote = '';
    } else if (letter === '"' || letter === "'") quote = letter;
    else if (letter === '[') bracket++;
    else if (letter === ']') bracket = Math.max(bracket - 1, 0);
    else if (bracket > 0) continue;
    else if (letter === '(') {
      open.push({ name: /[A-Za-z_][\w.]*$/.exec(before.slice(0, at))?.[0] ?? '', argument: 0 });
    } else if (letter === ')') open.pop();
    else if (letter === ',') {
      const call = open.at(-1);
      if (call !== undefined) call.argument++;
    }
  }
  const isPlain = quote === '' && bracket === 0;
  const word = isPlain ? (/(?<![\w.$!\]])[A-Za-z_][\w.]*$/.exec(before)?.[0] ?? '') : '';
  const call = [...open].reverse().find(({ name }) => name !== '');
  return {
    word,
    wordStart: caret - word.length,
    call,
    takesReference: isPlain && (before === '' || /[=(,+\-*/^&<>:;]\s*$/.test(before)),
  };
}
