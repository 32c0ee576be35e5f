import { CalcError } from '../errors.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import { orRefused } from './or-refused.ts';
import type { Band } from './within-doubt.ts';

export interface CapacitorReading {
  readonly label: Band;
  /** Meter reading with the capacitor off and discharged [F]. */
  readonly measuredF: number | undefined;
  /** Through the start winding's wire, running [A]. */
  readonly amps: number | undefined;
  /** Across the capacitor, running [V]. */
  readonly volts: number | undefined;
  readonly frequencyHz: number;
}

/** By how much a run capacitor may differ from its label. Common practice, no source: 5 to 10 % are printed too. */
export const labelTolerance = 0.06;

const microfarad = 1e-6;

/**
 * Capacitance from a running measurement: C = I / (2 pi f V); at 60 Hz 2652.6 I / V in microfarad.
 *
 * @returns [F]
 * @source definition of capacitive reactance
 */
export function runningCapacitanceF(reading: {
  readonly amps: number;
  readonly volts: number;
  readonly frequencyHz: number;
}): number {
  return reading.amps / (2 * Math.PI * reading.frequencyHz * reading.volts);
}

/**
 * What the label allows: "35" or "35 uF" within the tolerance, "88-108 uF" as printed.
 *
 * @returns band [F]
 * @throws CalcError invalid-argument, parameter label
 */
export function readLabel(text: string, tolerance: number): Band {
  const bare = text.trim().replace(/\s*(uf|µf|μf|mfd|microfarads?)\.?$/i, '');
  const match = /^(\d+(?:\.\d+)?)(?:\s*(?:-|to)\s*(\d+(?:\.\d+)?))?$/i.exec(bare);
  const first = Number(match?.[1]);
  if (!match || !(first > 0)) throw unreadable(text);
  if (match[2] === undefined) {
    return { lowest: first * microfarad * (1 - tolerance), highest: first * microfarad * (1 + tolerance) };
  }
  const second = Number(match[2]);
  return { lowest: Math.min(first, second) * microfarad, highest: Math.max(first, second) * microfarad };
}

function unreadable(text: string): CalcError {
  return new CalcError(
    `label must be one capacitance, such as 35 or 88-108 uF; received "${text}" (of a dual capacitor give one section)`,
    { code: 'invalid-argument', parameter: 'label', received: text, limit: 'such as 35 or 88-108 uF' },
  );
}

/**
 * Capacitance against the label, from the meter or from running amps and volts. Refused when neither was measured.
 *
 * @source definition; tolerance 6 %: common practice, no source
 */
export function capacitorCheck(reading: CapacitorReading): Verdict {
  return orRefused(() => judge(reading));
}

function judge(reading: CapacitorReading): Verdict {
  const { label } = reading;
  const capacitanceF = capacitanceOf(reading);
  const how = reading.measuredF === undefined ? phrase` from amps and volts` : [];
  const found = phrase`${capacitance(capacitanceF)}${how}, label allows ${capacitance(label.lowest)} to ${capacitance(label.highest)}`;
  if (capacitanceF < label.lowest - slackF) {
    return { word: 'Weak', reason: phrase`${found}; replace it before judging amps or charge` };
  }
  if (capacitanceF > label.highest + slackF) {
    return { word: 'High', reason: phrase`${found}; wrong part or a failing one, replace it` };
  }
  return { word: 'Good', reason: found };
}

const slackF = 1e-12;

function capacitanceOf({ measuredF, amps, volts, frequencyHz }: CapacitorReading): number {
  if (measuredF !== undefined) return measuredF;
  if (amps !== undefined && volts !== undefined) return runningCapacitanceF({ amps, volts, frequencyHz });
  throw new CalcError('measured is needed, or amps and volts while running', {
    code: 'refused',
    parameter: 'measured',
    received: 'nothing',
    limit: 'a capacitance, or amps and volts',
  });
}

function capacitance(valueF: number): Phrase[number] {
  return figure(valueF, 'capacitance');
}
