import { CalcError } from '../errors.ts';
import { figure } from '../phrase.ts';
import type { Figure } from '../phrase.ts';
import { liquidFullTemperatureK, netLimitKg, regulatoryMaximumKg } from './cylinder-limit.ts';
import type { CylinderFill } from './cylinder-limit.ts';
import { cylinderNetKg } from './cylinder-net.ts';
import { requireFillable } from './cylinder-rules.ts';
import type { CylinderFacts } from './cylinder-rules.ts';
import { spellMass } from './spell-mass.ts';

/** What can be asked of a cylinder. */
export const cylinderAnswers = ['net', 'gross', 'room', 'regulation', 'liquid full'] as const;

export type CylinderAnswer = (typeof cylinderAnswers)[number];

export interface CylinderQuestion extends CylinderFill, CylinderFacts {
  readonly tareKg?: number | undefined;
  /** On the scale now. */
  readonly grossKg?: number | undefined;
}

/**
 * One figure about the filling of a cylinder.
 *
 * @throws CalcError refused when the cylinder must not be filled at all, or is above its limit
 * @throws CalcError invalid-argument when a weight that the answer needs is missing
 */
export function cylinderFigure(answer: CylinderAnswer, cylinder: CylinderQuestion): Figure {
  requireFillable(cylinder);
  switch (answer) {
    case 'net':
      return figure(netLimitKg(cylinder), 'cylinderMass');
    case 'gross':
      return figure(netLimitKg(cylinder) + needed(cylinder, 'tare'), 'cylinderMass');
    case 'room':
      return figure(roomKg(cylinder), 'cylinderMass');
    case 'regulation':
      return figure(listedKg(cylinder), 'cylinderMass');
    case 'liquid full':
      return figure(liquidFullTemperatureK({ ...cylinder, netKg: fillOf(cylinder) }), 'temperature');
  }
}

function needed(cylinder: CylinderQuestion, name: 'tare' | 'gross'): number {
  const value = name === 'tare' ? cylinder.tareKg : cylinder.grossKg;
  if (value !== undefined) return value;
  throw new CalcError(`${name} is needed for this answer`, {
    code: 'invalid-argument',
    parameter: name,
    received: 'blank',
    limit: 'a weight',
  });
}

function contentsKg(cylinder: CylinderQuestion): number {
  return cylinderNetKg({ grossKg: needed(cylinder, 'gross'), tareKg: needed(cylinder, 'tare') });
}

function roomKg(cylinder: CylinderQuestion): number {
  const room = netLimitKg(cylinder) - contentsKg(cylinder);
  if (room >= 0) return room;
  throw new CalcError(
    `the cylinder is overfilled by ${spellMass(-room)}: move the excess to another one now`,
    {
      code: 'refused',
      parameter: 'gross',
      received: spellMass(cylinder.grossKg ?? 0),
      limit: spellMass(netLimitKg(cylinder) + (cylinder.tareKg ?? 0)),
    },
  );
}

function listedKg(cylinder: CylinderQuestion): number {
  const listed = regulatoryMaximumKg(cylinder);
  if (listed !== undefined) return listed;
  throw new CalcError('the regulation lists no filling density for this gas by name', {
    code: 'not-available',
    parameter: 'refrigerant',
    received: cylinder.refrigerant.designation,
    limit: 'R-22 or R-12',
  });
}

function fillOf(cylinder: CylinderQuestion): number {
  return cylinder.grossKg === undefined ? netLimitKg(cylinder) : contentsKg(cylinder);
}
