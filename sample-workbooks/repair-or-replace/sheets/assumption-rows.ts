import type { CostInput } from '../../../src/cost/index.ts';
import { names, ofUnit } from '../names.ts';

/** Where an input comes from when nothing is typed for it. Formulas without the equals sign. */
export interface Origin {
  readonly likely: string;
  readonly low?: string;
  readonly high?: string;
  /** Formula or text of the source, and of the date. */
  readonly source: string;
  readonly asOf?: string;
  /** Number format. */
  readonly format?: string;
}

const kind = (heading: string): string => `INDEX(Kinds[${heading}],MATCH(unit_kind,Kinds[Kind],0))`;
const price = (code: string, heading: string): string =>
  `INDEX(Prices[${heading}],MATCH(${code},Prices[Code],0))`;
/** An empty cell is read as 0 by INDEX; it is to stay empty. */
const kept = (cell: string): string => `IF(${cell}="","",${cell})`;

/** The price list counts in ounces; SI asks for a price per kilogram. */
const perMass = (cell: string): string =>
  `IF(${cell}="","",IF(${names.units}="SI",ROUND(${cell}/0.028349523125,2),${cell}))`;

function fromPrices(code: string, format?: string): Origin {
  return {
    likely: kept(price(code, 'Sell')),
    low: kept(price(code, 'Sell, low')),
    high: kept(price(code, 'Sell, high')),
    source: price(code, 'Where from'),
    asOf: price(code, 'Valid from'),
    ...(format === undefined ? {} : { format }),
  };
}

const count = 'COUNT(interval_counted_loss)';
const noLeak = `OR(${count}=0,history_loss="")`;
/** Intervals stand without gaps, the latest last; what was written after the day of the quote does not count. */
const lastOf = (name: string): string => `INDEX(${name},COUNTIF(interval_to,"<="&${names.date}))`;
const likelyLoss = `IF(LEFT(history_trend,7)="Growing",${lastOf('interval_loss')},history_loss)`;
const months = ofUnit('Months in service');
const hours = (heading: string): string => `IF(${months}="","",${months}*${kind(heading)})`;

const register = '"unit register"';

/** Inputs that the register, the ledger, the price list or the kind of unit know. The rest comes from the template. */
export const origins: Partial<Record<CostInput, Origin>> = {
  capacity: { likely: ofUnit('Cooling capacity'), source: register, format: '#,##0' },
  efficiency: { likely: ofUnit('Efficiency'), source: register },
  newEfficiency: {
    likely: `IF(${names.units}="SI",ROUND(${kind('New efficiency')}*0.29307107,3),${kind('New efficiency')})`,
    source: kind('Where from'),
    asOf: kind('As of'),
  },
  hours: {
    likely: hours('Hours a month'),
    low: hours('Hours, low'),
    high: hours('Hours, high'),
    source: `"months of the register x hours a month: "&${kind('Where from')}`,
    asOf: kind('As of'),
    format: '#,##0',
  },
  nameplate: { likely: ofUnit('Nameplate charge'), source: register },
  ouncesAYear: {
    likely: `IF(${noLeak},"",ROUND(${likelyLoss},2))`,
    low: `IF(${noLeak},"",ROUND(IF(${count}=1,${likelyLoss}/2,MIN(${likelyLoss},IF(LEFT(history_trend,7)="Growing",history_loss,MIN(interval_counted_loss)))),2))`,
    high: `IF(${noLeak},"",ROUND(IF(${count}=1,${likelyLoss}*2,MAX(${likelyLoss},interval_counted_loss)),2))`,
    source: `IF(${noLeak},"no leak in the ledger",IF(${count}=1,"ledger, one interval: half to double","ledger: "&${count}&" intervals, "&LOWER(history_trend)))`,
    format: '0.00',
  },
  leakGrowth: {
    likely: '0',
    low: `IF(LEFT(history_trend,7)="Growing",0,"")`,
    high: `IF(LEFT(history_trend,7)="Growing",30,"")`,
    source: `IF(LEFT(history_trend,7)="Growing","assumption, no source: it has grown so far, see Unit","assumption: steady, as the ledger shows or does not contradict")`,
    format: '0',
  },
  chargeNow: {
    likely: `IF(${noLeak},"",ROUND(MAX(0,100-100*${likelyLoss}*(${names.date}-${lastOf('interval_to')})/365/${ofUnit('Nameplate charge')}),0))`,
    source: '"full at the last addition, less the loss since"',
    format: '0',
  },
  visitPrice: fromPrices('"CALL"'),
  refrigerantPrice: {
    ...fromPrices('unit_gas'),
    likely: perMass(price('unit_gas', 'Sell')),
    low: perMass(price('unit_gas', 'Sell, low')),
    high: perMass(price('unit_gas', 'Sell, high')),
  },
  repairPrice: fromPrices('"REPAIR"'),
  replacementPrice: {
    likely: kind('New unit'),
    low: kept(kind('New unit, low')),
    high: kept(kind('New unit, high')),
    source: kind('Where from'),
    asOf: kind('As of'),
  },
  age: { likely: 'unit_age', source: register },
};
