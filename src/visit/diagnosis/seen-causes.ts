import type { Phrase } from '../../phrase.ts';
import { phrase } from '../../phrase.ts';
import type { Gate, GateReadings } from '../gates.ts';
import type { JudgedCause } from './fault-signs.ts';

/** A fault that was seen at a gate, with what was seen and what to do about it. */
export interface SeenCause {
  readonly cause: JudgedCause | 'supply fault';
  readonly evidence: Phrase;
  readonly next: Phrase;
}

type Part = 'filter' | 'indoorCoil' | 'outdoorCoil' | 'vents' | 'fan';

/** Faults that were seen at the gates, in the order they are worked off. */
export function seenCauses(gates: readonly Gate[], readings: GateReadings): readonly SeenCause[] {
  const lines: SeenCause[] = [];
  const closed = (name: Gate['name']): Gate | undefined =>
    gates.find((gate) => gate.name === name && gate.state === 'closed');
  const supply = closed('supply');
  if (supply)
    lines.push({
      cause: 'supply fault',
      evidence: supply.finding,
      next: phrase`volts at the source, idle and running`,
    });
  // Frost at the inlet alone is a starved coil: evidence among the readings, no ice that hides them.
  const frost = readings.frost === 'inlet only' ? undefined : closed('frost');
  if (frost)
    lines.push({
      cause: 'ice',
      evidence: frost.finding,
      next: phrase`thaw, then look at filter, coil, fan and vents`,
    });
  const bad = (part: Part): boolean => readings[part] === 'dirty' || readings[part] === 'blocked';
  const say = (part: Part, name: string): string[] => (bad(part) ? [`${name} ${readings[part] ?? ''}`] : []);
  const indoor = [
    ...say('filter', 'filter'),
    ...say('indoorCoil', 'indoor coil'),
    ...say('vents', 'vents or ducts'),
    ...say('fan', 'fan'),
  ];
  if (indoor.length > 0) {
    lines.push({
      cause: 'low indoor airflow',
      evidence: [indoor.join(', ')],
      next: phrase`clean, settle 15 min, read again`,
    });
  }
  if (bad('outdoorCoil')) {
    lines.push({
      cause: 'dirty condenser',
      evidence: say('outdoorCoil', 'outdoor coil'),
      next: phrase`clean, settle 15 min, read again`,
    });
  }
  return lines;
}
