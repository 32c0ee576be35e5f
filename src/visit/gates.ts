import type { Phrase } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import { fahrenheitK, minutesS } from '../units/trade.ts';
import type { VerdictWord } from '../verdict-words.ts';
import type { RatedVolts } from './supply-band.ts';
import { supplyBand, supplyState } from './supply-band.ts';

export const cleanlinessChoices = ['clean', 'dirty', 'blocked', 'not seen'] as const;
export type Cleanliness = (typeof cleanlinessChoices)[number];

export const frostChoices = ['none', 'inlet only', 'part', 'full', 'not seen'] as const;
export type Frost = (typeof frostChoices)[number];

/** What was looked at before a charge verdict; undefined is "not looked at", which is not "clean". */
export interface GateReadings {
  readonly filter?: Cleanliness | undefined;
  readonly indoorCoil?: Cleanliness | undefined;
  readonly outdoorCoil?: Cleanliness | undefined;
  readonly vents?: Cleanliness | undefined;
  readonly fan?: Cleanliness | undefined;
  readonly frost?: Frost | undefined;
  /** Since the start or the last change, cleaning or charge step [s]. */
  readonly settledS?: number | undefined;
  /** At the unit, running [V]. */
  readonly volts?: number | undefined;
  readonly ratedVolts?: RatedVolts | undefined;
  readonly outdoorTemperatureK?: number | undefined;
}

/** In the order in which they are worked off: what burns a compressor first, what only needs patience last. */
export const gateNames = ['supply', 'frost', 'dirt', 'outdoor temperature', 'settling'] as const;
export type GateName = (typeof gateNames)[number];

export interface Gate {
  readonly name: GateName;
  /** A gate nobody looked at is not open. */
  readonly state: 'open' | 'closed' | 'not seen';
  /** First word of the verdict while this gate is closed. */
  readonly word?: VerdictWord;
  /** What is wrong, or what was not looked at; empty when open. */
  readonly finding: Phrase;
}

/** Least time from start or change to a reading. Source: California RA3.2.2.6 step 6 (2008). */
export const settlingS = minutesS(15);

/** Lowest outdoor temperature for judging the charge of a running unit. Source: California RA3.2.1 (2008), RA3.2.1.1(d) (2013). */
export const lowestOutdoorK = fahrenheitK(55);

/**
 * Highest outdoor temperature: 52 degC, the hottest maximum-operation test of ISO 5151 (climate T3, from memory). No unit is
 * rated above it, and no target is published above 115 degF.
 */
export const highestOutdoorK = 273.15 + 52;

/** Every gate of a reading set, first to be worked off first. */
export function judgeGates(readings: GateReadings): readonly Gate[] {
  return [
    supplyGate(readings),
    frostGate(readings.frost),
    dirtGate(readings),
    outdoorGate(readings.outdoorTemperatureK),
    settlingGate(readings.settledS),
  ];
}

const open = (name: GateName): Gate => ({ name, state: 'open', finding: [] });
const closedWords: Readonly<Record<GateName, VerdictWord>> = {
  supply: 'Fix supply',
  frost: 'Thaw first',
  dirt: 'Clean first',
  'outdoor temperature': 'Cold outdoors',
  settling: 'Wait',
};

const closed = (name: GateName, finding: Phrase, word = closedWords[name]): Gate => ({
  name,
  state: 'closed',
  word,
  finding,
});
const notSeen = (name: GateName, finding: Phrase): Gate => ({ name, state: 'not seen', finding });

function supplyGate({ volts, ratedVolts }: GateReadings): Gate {
  if (volts === undefined) return notSeen('supply', phrase`the supply volts at the unit, running`);
  if (ratedVolts === undefined) return notSeen('supply', phrase`the rated volts on the nameplate`);
  const state = supplyState(volts, ratedVolts);
  if (state === 'in band') return open('supply');
  const { lowestV, highestV } = supplyBand(ratedVolts);
  return closed(
    'supply',
    phrase`${figure(volts, 'voltage')} is ${state}, the unit may run on ${figure(lowestV, 'voltage')} to ${figure(highestV, 'voltage')}`,
  );
}

function frostGate(frost: Frost | undefined): Gate {
  if (frost === 'none') return open('frost');
  if (frost === undefined || frost === 'not seen') return notSeen('frost', phrase`the indoor coil for frost`);
  const where = { 'inlet only': 'at the coil inlet', part: 'on part of the coil', full: 'all over the coil' };
  return closed('frost', phrase`frost ${where[frost]}`);
}

/** Parts that can stop air, in the order a technician meets them. */
const airParts = [
  ['filter', 'filter'],
  ['indoorCoil', 'indoor coil'],
  ['outdoorCoil', 'outdoor coil'],
  ['vents', 'vents or ducts'],
  ['fan', 'fan'],
] as const;

function dirtGate(readings: GateReadings): Gate {
  const dirt = airParts.filter(([key]) => readings[key] === 'dirty' || readings[key] === 'blocked');
  if (dirt.length > 0) {
    return closed('dirt', [dirt.map(([key, name]) => `${name} ${String(readings[key])}`).join(', ')]);
  }
  const unseen = airParts.filter(([key]) => readings[key] === undefined || readings[key] === 'not seen');
  return unseen.length === 0
    ? open('dirt')
    : notSeen('dirt', [unseen.map(([, name]) => `the ${name}`).join(', ')]);
}

function outdoorGate(outdoorTemperatureK: number | undefined): Gate {
  if (outdoorTemperatureK === undefined)
    return notSeen('outdoor temperature', phrase`the outdoor temperature`);
  // A reading of exactly 55 degF is allowed, whatever the conversion does to its last digit.
  if (outdoorTemperatureK >= lowestOutdoorK - 1e-9 && outdoorTemperatureK <= highestOutdoorK + 1e-9) {
    return open('outdoor temperature');
  }
  if (outdoorTemperatureK > highestOutdoorK) {
    return closed(
      'outdoor temperature',
      phrase`${figure(outdoorTemperatureK, 'temperature')} outdoors is above ${figure(highestOutdoorK, 'temperature', { decimals: 0 })}, where no unit is rated`,
      'Hot outdoors',
    );
  }
  return closed(
    'outdoor temperature',
    phrase`${figure(outdoorTemperatureK, 'temperature')} outdoors is below ${figure(lowestOutdoorK, 'temperature', { decimals: 0 })}`,
  );
}

function settlingGate(settledS: number | undefined): Gate {
  if (settledS === undefined) return notSeen('settling', phrase`the minutes since start or change`);
  if (settledS >= settlingS) return open('settling');
  // Whole minutes upwards: a timer that says 0 while time is left would open the gate early.
  const leftS = minutesS(Math.ceil((settlingS - settledS) / 60 - 1e-9));
  return closed(
    'settling',
    phrase`${figure(leftS, 'minutes')} left of ${figure(settlingS, 'minutes')} since start or change`,
  );
}
