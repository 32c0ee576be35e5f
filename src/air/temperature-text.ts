import { zeroCelsiusK } from './psychrometrics.ts';

/** A temperature in an error message, where it is not known in which units the reader works: "76.0 degF (24.4 degC)". */
export function temperatureText(temperatureK: number): string {
  const celsius = temperatureK - zeroCelsiusK;
  return `${(celsius * 1.8 + 32).toFixed(1)} degF (${celsius.toFixed(1)} degC)`;
}
