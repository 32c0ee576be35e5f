import type { Field, Limits } from '../../../src/records/index.ts';

/** "0..600", "15..", "..225": both ends belong to it. */
function ends(limits: Limits | undefined): string {
  return limits ? `${String(limits.minimum ?? '')}..${String(limits.maximum ?? '')}` : '';
}

/** Everything that a field declares but its help, in one line: blank parts are left out. */
export function lineOf(field: Field): string {
  const { name, heading, kind, quantity, unit, integer, required, origin, longest } = field;
  const whether = typeof required === 'boolean' ? (required ? 'required' : '') : `required ${required.words}`;
  return [
    name,
    heading,
    kind,
    quantity === undefined ? '' : `${quantity} in ${unit || 'ones'}${integer ? ', whole' : ''}`,
    longest === undefined ? '' : `up to ${String(longest)}`,
    field.reject ? `reject ${ends(field.reject)}` : '',
    field.warn ? `warn ${ends(field.warn)}` : '',
    whether,
    origin === 'computed' ? 'computed' : '',
    field.choices ? `of ${field.choices.join(', ')}` : '',
    field.numbered ? `numbered ${field.numbered.join(', ')}` : '',
    field.aliases ? `also ${field.aliases.join(', ')}` : '',
  ]
    .filter((part) => part !== '')
    .join(' | ');
}
