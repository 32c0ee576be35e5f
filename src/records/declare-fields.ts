import type { Quantity } from '../units/quantities.ts';
import type { Condition, Field, Limits } from './field.ts';

/** What every field may say beside its name and heading. Input and not required unless told otherwise. */
interface Common {
  readonly help: string;
  readonly required?: boolean | Condition;
  readonly computed?: true;
  readonly aliases?: readonly string[];
}

interface NumberOptions extends Common {
  readonly quantity: Quantity;
  /** The unit of the limits; the US unit of the quantity is what the sheets show. */
  readonly unit: string;
  readonly reject?: readonly [number | undefined, number | undefined];
  readonly warn?: readonly [number | undefined, number | undefined];
  readonly integer?: true;
}

function limits(pair: readonly [number | undefined, number | undefined]): Limits {
  const [minimum, maximum] = pair;
  return { ...(minimum !== undefined && { minimum }), ...(maximum !== undefined && { maximum }) };
}

function common(group: string, name: string, heading: string, options: Common): Omit<Field, 'kind'> {
  return {
    name,
    heading,
    group,
    help: options.help,
    required: options.required ?? false,
    origin: options.computed ? 'computed' : 'input',
    ...(options.aliases && { aliases: options.aliases }),
  };
}

/** Builders for the fields of one block of a sheet, so that a table reads as a list. */
export function fieldsOf(group: string) {
  return {
    text: (name: string, heading: string, options: Common & { readonly longest?: number }): Field => ({
      ...common(group, name, heading, options),
      kind: 'text',
      ...(options.longest !== undefined && { longest: options.longest }),
    }),
    number: (name: string, heading: string, options: NumberOptions): Field => ({
      ...common(group, name, heading, options),
      kind: 'number',
      quantity: options.quantity,
      unit: options.unit,
      ...(options.reject && { reject: limits(options.reject) }),
      ...(options.warn && { warn: limits(options.warn) }),
      ...(options.integer && { integer: true }),
    }),
    choice: (
      name: string,
      heading: string,
      options: Common & { readonly choices: readonly string[]; readonly numbered?: readonly string[] },
    ): Field => ({
      ...common(group, name, heading, options),
      kind: 'choice',
      choices: options.choices,
      ...(options.numbered && { numbered: options.numbered }),
    }),
    date: (name: string, heading: string, options: Common): Field => ({
      ...common(group, name, heading, options),
      kind: 'date',
    }),
    dateTime: (name: string, heading: string, options: Common): Field => ({
      ...common(group, name, heading, options),
      kind: 'dateTime',
    }),
    yesNo: (name: string, heading: string, options: Common): Field => ({
      ...common(group, name, heading, options),
      kind: 'yesNo',
    }),
    refrigerant: (name: string, heading: string, options: Common): Field => ({
      ...common(group, name, heading, options),
      kind: 'refrigerant',
    }),
    link: (name: string, heading: string, options: Common): Field => ({
      ...common(group, name, heading, options),
      kind: 'link',
    }),
  };
}
