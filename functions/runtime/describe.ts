import { quantities } from '../../src/units/quantities.ts';
import type { Unit } from '../../src/units/quantities.ts';
import { findUnit, fromSi } from '../../src/units/conversion.ts';
import { standardAtmospherePa } from '../../src/air/standard-atmosphere.ts';
import type { NumberParameter, Parameter } from './define.ts';

/** A parameter in words: description, units, choices, limits, default. Every host's help is made from it. */
export function describeParameter(parameter: Parameter): string {
  const parts = [parameter.description];
  const details = detailsOf(parameter);
  if (details !== '') parts.push(details);
  if ('optional' in parameter && parameter.optional) parts.push('May be left out.');
  return parts.join(' ');
}

/** Units, choices, limits and default, without the description. */
export function detailsOf(parameter: Parameter): string {
  switch (parameter.kind) {
    case 'number':
      return numberDetails(parameter);
    case 'choice':
      return `One of: ${parameter.choices.join(', ')}.${defaultOf(parameter.default)}`;
    case 'yesNo':
      return `Yes or no.${defaultOf(parameter.default === undefined ? undefined : parameter.default ? 'yes' : 'no')}`;
    case 'date':
      return 'A date.';
    case 'list':
      return `A range. ${detailsOf(parameter.of)}`.trim();
    case 'table':
      return 'A range with its heading row.';
    case 'text':
    case 'refrigerant':
      return '';
  }
}

function defaultOf(value: string | undefined): string {
  return value === undefined ? '' : ` ${value} if left out.`;
}

function numberDetails(parameter: NumberParameter): string {
  const { quantity, minimum, maximum, above } = parameter;
  const definition = quantities[quantity];
  const us = findUnit(quantity, definition.us);
  if (!us) return '';
  const units =
    definition.us === definition.metric ? definition.us : `${definition.us}, in SI ${definition.metric}`;
  const limits: string[] = [];
  if (minimum !== undefined) limits.push(`from ${limit(minimum, us)}`);
  if (above !== undefined) limits.push(`more than ${limit(above, us)}`);
  if (maximum !== undefined) limits.push(`to ${limit(maximum, us)}`);
  const words = [
    units === '' || units === 'money' ? '' : `In ${units}.`,
    limits.length === 0 ? '' : `Allowed ${limits.join(' ')}.`,
    parameter.default === undefined ? '' : `${limit(parameter.default, us)} if left out.`,
  ];
  return words.filter((word) => word !== '').join(' ');
}

function limit(si: number, unit: Unit): string {
  const value = Number(fromSi(si, unit, standardAtmospherePa(0)).toPrecision(5));
  return unit.symbol === '' || unit.symbol === 'money' ? String(value) : `${value} ${unit.symbol}`;
}
