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
const growing = 'LEFT(history_trend,7)="Growing"';
/** Full at the last addition; what is left today at a loss a year. */
const chargeAfter = (lossAYear: string): string =>
  `IF(${noLeak},"",ROUND(MAX(0,100-100*${lossAYear}*(${names.date}-${lastOf('interval_to')})/365/${ofUnit('Nameplate charge')}),0))`;
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
    low: `IF(${noLeak},"",ROUND(IF(${growing},${likelyLoss}/2,history_loss_low),2))`,
    high: `IF(${noLeak},"",ROUND(IF(${growing},${likelyLoss}*2,history_loss_high),2))`,
    source: `IF(${noLeak},"no loss in the ledger",IF(${growing},"ledger, the last interval alone, for the leak has grown: half to double","ledger: "&${count}&IF(${count}=1," interval"," intervals")&" from top-up to top-up, "&LOWER(history_trend)&"; nine times in ten between"))`,
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
    likely: chargeAfter(likelyLoss),
    low: chargeAfter(`IF(${growing},${likelyLoss}*2,history_loss_high)`),
    high: chargeAfter(`IF(${growing},${likelyLoss}/2,history_loss_low)`),
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
  flammability: {
    likely: 'IF(unit_class="",0,VALUE(MID(unit_class,2,1)))',
    source: 'IF(unit_class="","the gas is not in the register","safety class "&unit_class)',
    format: '0',
  },
  gasObtainable: {
    likely: `IF(AND(${names.region}="EU",IFERROR(VALUE(OUNCE.REFRIGERANTFACT(unit_gas,"odp")),0)>0,LEFT(IFERROR(OUNCE.REFRIGERANTFACT(unit_gas,"type"),""),4)<>"HCFO"),0,1)`,
    source: `IF(${names.region}="EU","Regulation (EU) 2024/590, no ozone-depleting gas for service; from memory","no rule known that forbids it; overrule it when nobody sells it")`,
    format: '0',
  },
  warrantyLeft: {
    likely: `IF(unit_warranty="","",MAX(0,ROUND((unit_warranty+1-${names.date})/365.25,2)))`,
    source: register,
    format: '0.0',
  },
  visitsOnRecord: { likely: 'N(history_visits)', source: '"ledger"', format: '0' },
  topUpsWeighed: {
    likely: `IF(history_trend="One top-up",1,IF(${count}=0,0,${count}+1))`,
    source: '"ledger, since the last repair that was found to hold"',
    format: '0',
  },
};
