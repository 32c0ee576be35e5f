import { confirmedSafetyClass, odpConfirmedBy, safetyClassConfirmedBy } from '../data/confirmed-facts.ts';
import type { Catalogue } from '../data/catalogue.ts';
import type { FluidEquation, MixingPair } from '../data/equation-form.ts';
import type { BlendFacts, GwpBasis, PureFacts, RefrigerantType, SafetyClass } from '../data/facts-form.ts';
import type { SaturationTable } from '../data/saturation-form.ts';
import { mixture, mixtureModel } from './equation-of-state/mixture-model.ts';
import type { HelmholtzModel } from './equation-of-state/model.ts';
import { moleFractions } from './equation-of-state/mole-fractions.ts';
import { pureModel } from './equation-of-state/pure-model.ts';
import { gradeOfBlend, gradeOfPure } from './quality.ts';
import type { QualityGrade } from './quality.ts';
import { isBlendFacts } from './refrigerant.ts';
import type { Component, FactName, Facts, Refrigerant } from './refrigerant.ts';
import { SaturationFit } from './saturation-fit.ts';
import { blendGwp, gwpOf, gwpSources } from './warming.ts';

const atmospherePa = 101325;

/** A refrigerant whose tables and models are only unpacked when they are first asked for. */
export class BuiltRefrigerant implements Refrigerant {
  readonly designation: string;
  readonly names: readonly string[];
  readonly type: RefrigerantType;
  readonly isBlend: boolean;
  readonly safetyClass: SafetyClass;
  readonly usualOil: string;
  readonly composition: readonly Component[];
  readonly molarMassKgPerMol: number;
  readonly gwp: Readonly<Partial<Record<GwpBasis, number>>>;
  readonly gwpSources = gwpSources;
  readonly odp: number;
  readonly lowerFlammabilityLimitKgPerM3: number | undefined;
  readonly leavesCylinderAs: 'liquid' | 'liquid or vapor';
  readonly onlyInBlends: boolean;
  readonly factoryCharge: boolean;
  private readonly facts: Facts;
  private readonly library: Catalogue;
  private readonly fitted: FluidEquation | undefined;
  private fit: SaturationFit | undefined;
  private helmholtz: HelmholtzModel | undefined;

  constructor(facts: Facts, library: Catalogue) {
    this.facts = facts;
    this.library = library;
    this.designation = facts.designation;
    this.names = facts.names;
    this.type = facts.type;
    this.isBlend = isBlendFacts(facts);
    this.safetyClass = facts.safetyClass;
    this.usualOil = facts.usualOil;
    this.lowerFlammabilityLimitKgPerM3 = facts.lowerFlammabilityLimitKgPerM3;
    this.onlyInBlends = !isBlendFacts(facts) && facts.onlyInBlends === true;
    this.factoryCharge = facts.factoryCharge === true;
    this.fitted = library.equations.get(facts.designation);
    if (isBlendFacts(facts)) {
      const molarMasses = facts.components.map(([d]) => equationOf(library, d).molarMassKgPerMol);
      const masses = facts.components.map(([, mass]) => mass);
      const moles = moleFractions(masses, molarMasses);
      this.composition = facts.components.map(([designation, massFraction], i) => ({
        designation,
        massFraction,
        moleFraction: moles[i]!,
      }));
      this.molarMassKgPerMol =
        this.fitted?.molarMassKgPerMol ?? moles.reduce((sum, x, i) => sum + x * molarMasses[i]!, 0);
      this.gwp = blendGwp(facts, (designation) => factsOf(library, designation));
      const odp = facts.components.reduce((sum, [d, mass]) => sum + mass * factsOf(library, d).odp, 0);
      this.odp = Math.round(odp * 1e5) / 1e5;
      // Series 500 are azeotropes: their vapor has the composition of their liquid.
      this.leavesCylinderAs = /^R-5\d\d/.test(facts.designation) ? 'liquid or vapor' : 'liquid';
    } else {
      this.composition = [{ designation: facts.designation, massFraction: 1, moleFraction: 1 }];
      this.molarMassKgPerMol = equationOf(library, facts.designation).molarMassKgPerMol;
      this.gwp = gwpOf(facts);
      this.odp = facts.odp;
      this.leavesCylinderAs = 'liquid or vapor';
    }
  }

  get saturation(): SaturationFit {
    return (this.fit ??= new SaturationFit(tableOf(this.library, this.designation)));
  }

  get model(): HelmholtzModel {
    return (this.helmholtz ??= this.buildModel());
  }

  get highestModelTemperatureK(): number {
    if (this.fitted !== undefined) return this.fitted.highestTemperatureK;
    return Math.min(
      ...this.composition.map(({ designation }) => equationOf(this.library, designation).highestTemperatureK),
    );
  }

  private buildModel(): HelmholtzModel {
    if (this.fitted !== undefined) return pureModel(this.fitted);
    const components = this.composition.map((c) => equationOf(this.library, c.designation));
    return mixtureModel(
      mixture(components, this.library.pairs, this.library.departures),
      this.composition.map((c) => c.moleFraction),
    );
  }

  get criticalTemperatureK(): number {
    return this.fitted?.criticalTemperatureK ?? this.saturation.criticalTemperatureK;
  }

  get criticalPressurePa(): number {
    return this.fitted?.criticalPressurePa ?? this.saturation.criticalPressurePa;
  }

  get normalBoilingPoint(): { readonly bubbleK: number; readonly dewK: number } | undefined {
    if (this.saturation.lowestPressurePa('bubble') > atmospherePa) return undefined;
    return {
      bubbleK: this.saturation.temperatureK(atmospherePa, 'bubble'),
      dewK: this.saturation.temperatureK(atmospherePa, 'dew'),
    };
  }

  get glideAtAtmosphereK(): number | undefined {
    const point = this.normalBoilingPoint;
    return point === undefined ? undefined : point.dewK - point.bubbleK;
  }

  get qualityGrade(): QualityGrade {
    const boiling = this.normalBoilingPoint;
    if (!isBlendFacts(this.facts) || boiling === undefined) return gradeOfPure();
    return gradeOfBlend({
      facts: this.facts,
      pseudoPure: this.fitted !== undefined,
      estimatedPairs:
        this.fitted === undefined ? estimatedPairsOf(this.facts, publishedPairs(this.library)) : [],
      ...boiling,
    });
  }

  get sources(): Readonly<Record<FactName, string>> {
    const own = this.fitted?.source;
    const pairs = publishedPairs(this.library).filter(
      (p) =>
        this.composition.some((c) => c.designation === p.first) &&
        this.composition.some((c) => c.designation === p.second),
    );
    const papers = own !== undefined ? [own] : [...new Set(pairs.map((p) => p.source))];
    const model = `${own !== undefined ? 'equation of state' : 'mixture model'}: ${papers.join(', ')} (src/data/references.bib)`;
    return {
      composition: compositionSource(this.facts),
      type: 'by composition',
      safetyClass: confirmedSafetyClass.has(this.designation)
        ? `ASHRAE 34, ${safetyClassConfirmedBy}`
        : 'ASHRAE 34; from memory of the standard',
      molarMass: 'equation of state of each component',
      criticalPoint:
        own !== undefined ? `as stated with the ${model}` : `where the phases meet in the ${model}`,
      normalBoilingPoint: `${model}, at 101.325 kPa`,
      glide: `${model}, at 101.325 kPa`,
      usualOil: 'trade practice; the nameplate or the maker decides',
      odp: odpSource(
        this.composition.map(({ designation }) => designation),
        this.odp,
      ),
      lowerFlammabilityLimit: 'ASHRAE 34; from memory of the standard',
      model,
    };
  }
}

/** The components that deplete ozone, each with the place that confirms its value or "from memory". */
function odpSource(designations: readonly string[], odp: number): string {
  if (odp === 0) return 'no chlorine or bromine: by composition';
  const byMass = designations.length > 1 ? ', by mass of the components' : '';
  const seen = designations.flatMap((designation) => odpConfirmedBy[designation] ?? []);
  const isConfirmed = designations.length === 1 && seen.length === 1;
  return isConfirmed ? (seen[0] ?? '') : `Montreal Protocol${byMass}; from memory`;
}

function compositionSource(facts: Facts): string {
  if (!isBlendFacts(facts)) return 'single substance';
  const standard = 'ASHRAE 34 nominal composition by mass; from memory of the standard';
  return facts.compositionUnconfirmed
    ? `${standard}, not confirmed elsewhere`
    : `${standard}, the same in the property library the equations come from`;
}

function equationOf(library: Catalogue, designation: string): FluidEquation {
  const equation = library.equations.get(designation);
  if (equation === undefined) throw new Error(`no equation of state for ${designation}`);
  return equation;
}

function factsOf(library: Catalogue, designation: string): PureFacts {
  const facts = library.pureFacts.get(designation);
  if (facts === undefined) throw new Error(`no facts for ${designation}`);
  return facts;
}

function tableOf(library: Catalogue, designation: string): SaturationTable {
  const table = library.tables.get(designation);
  if (table === undefined) throw new Error(`no saturation table for ${designation}`);
  return table;
}

function publishedPairs(library: Catalogue): MixingPair[] {
  return library.pairs.filter((pair) => !pair.source.startsWith('estimated'));
}

/** Pairs of components without published mixing parameters. */
function estimatedPairsOf(facts: BlendFacts, published: readonly MixingPair[]): string[] {
  const names = facts.components.map(([designation]) => designation);
  return names.flatMap((one, i) =>
    names
      .slice(i + 1)
      .filter(
        (other) =>
          !published.some(
            (p) => (p.first === one && p.second === other) || (p.first === other && p.second === one),
          ),
      )
      .map((other) => `${one} with ${other}`),
  );
}
