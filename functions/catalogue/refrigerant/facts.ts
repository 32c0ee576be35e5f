import { CalcError } from '../../../src/errors.ts';
import type { Figure, Phrase } from '../../../src/phrase.ts';
import { figure, phrase } from '../../../src/phrase.ts';
import type { Refrigerant } from '../../../src/refrigerants/index.ts';

type Fact = (refrigerant: Refrigerant) => string | Phrase | Figure | undefined;

interface FactEntry {
  readonly value: Fact;
  /** Whose source it shares, or words of its own. */
  readonly source: string;
}

const own = 'Ouncewise, from the model and the boiling points of standard 34; see the function guide';

const facts = {
  'safety class': { value: (gas) => gas.safetyClass, source: 'safetyClass' },
  composition: { value: compositionText, source: 'composition' },
  type: { value: (gas) => gas.type, source: 'type' },
  names: { value: (gas) => [gas.designation, ...gas.names].join(', '), source: 'names in trade use' },
  oil: { value: (gas) => gas.usualOil, source: 'usualOil' },
  'molar mass': {
    value: (gas) => `${(gas.molarMassKgPerMol * 1000).toFixed(2)} g/mol`,
    source: 'molarMass',
  },
  'critical temperature': {
    value: (gas) => figure(gas.criticalTemperatureK, 'temperature'),
    source: 'criticalPoint',
  },
  'critical pressure': {
    value: (gas) => figure(gas.criticalPressurePa, 'absolutePressure'),
    source: 'criticalPoint',
  },
  'boiling point': {
    value: (gas) => gas.normalBoilingPoint && figure(gas.normalBoilingPoint.bubbleK, 'temperature'),
    source: 'normalBoilingPoint',
  },
  glide: {
    value: (gas) =>
      gas.glideAtAtmosphereK === undefined
        ? undefined
        : figure(gas.glideAtAtmosphereK, 'temperatureDifference'),
    source: 'glide',
  },
  odp: { value: (gas) => figure(gas.odp, 'ratio'), source: 'odp' },
  'flammability limit': {
    value: (gas) =>
      gas.lowerFlammabilityLimitKgPerM3 === undefined
        ? undefined
        : figure(gas.lowerFlammabilityLimitKgPerM3, 'density'),
    source: 'lowerFlammabilityLimit',
  },
  cylinder: {
    value: (gas) => `leaves the cylinder as ${gas.leavesCylinderAs}`,
    source: 'common practice, no source: a blend with glide shifts when drawn as vapor',
  },
  quality: { value: (gas) => `${gas.qualityGrade.grade}: ${gas.qualityGrade.reason}`, source: own },
  doubt: { value: (gas) => figure(gas.qualityGrade.doubtK, 'temperatureDifference'), source: own },
  model: { value: (gas) => gas.sources.model, source: 'model' },
  range: {
    value: ({ saturation }) =>
      phrase`saturation from ${figure(saturation.lowestTemperatureK, 'temperature')} to ${figure(saturation.highestTemperatureK, 'temperature')}`,
    source: 'limits of the published equation of state and of the fit',
  },
} as const satisfies Record<string, FactEntry>;

export type FactChoice = keyof typeof facts;

export const factNames = Object.keys(facts) as readonly FactChoice[];

export function factOf(refrigerant: Refrigerant, fact: FactChoice): string | Phrase | Figure {
  const entry: FactEntry = facts[fact];
  const value = entry.value(refrigerant);
  if (value !== undefined) return value;
  throw new CalcError(`${refrigerant.designation} has no ${fact}`, {
    code: 'not-available',
    parameter: 'fact',
    received: fact,
  });
}

export function sourceOfFact(refrigerant: Refrigerant, fact: FactChoice): string {
  const { source }: FactEntry = facts[fact];
  return (refrigerant.sources as Readonly<Record<string, string>>)[source] ?? source;
}

function compositionText({ composition }: Refrigerant): string {
  if (composition.length < 2) return 'single substance';
  return composition
    .map(
      ({ designation, massFraction }) =>
        `${designation} ${String(Number((massFraction * 100).toFixed(2)))} %`,
    )
    .join(' / ');
}
