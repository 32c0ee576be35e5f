import { isFlammable } from '../../src/access/gas-safety.ts';
import { standardAtmospherePa, standardAtmosphereTemperatureK } from '../../src/air/standard-atmosphere.ts';
import { defaultInstruments } from '../../src/visit/answer/index.ts';
import { actions } from '../../src/visit/answer/index.ts';
import { plausibleVolts } from '../../src/visit/supply-band.ts';
import { targetSplitRows } from '../../src/visit/target-split-table.ts';
import { targetSuperheatRows } from '../../src/visit/target-superheat-table.ts';
import { columnLetters } from '../writing/address.ts';
import type { CellRecipe, SheetRecipe } from '../writing/recipe.ts';
import { formula } from '../writing/recipe.ts';
import { reducedRules } from './answer/reduced-rules.ts';
import { curveNames, curveParts } from './formulas/curves.ts';
import { limitsOf } from './formulas/limits.ts';
import { splitTable } from './formulas/readings.ts';
import { outOfLimits, unreadable } from './formulas/typed-checks.ts';
import { flag, isNumber } from './formulas/words.ts';
import type { PlacedLines } from './place-of-lines.ts';
import { flagColumn, setColumns } from './place-of-lines.ts';
import type { Series } from './saturation-series.ts';
import { gasSeries, stampOfFits } from './saturation-series.ts';
import type { SheetUnits } from './sheet-units.ts';
import { plain } from './sheet-units.ts';

/** First row of every table below its headings. */
const top = 3;
const gasColumn = 5;

/** The sheet of figures behind the formulas, and the names by which the formulas call them. */
export interface Tables {
  readonly named: ReadonlyMap<string, string>;
  sheet(): SheetRecipe;
}

export function tablesOf(placed: PlacedLines): Tables {
  const { units } = placed;
  const gases = gasSeries(units);
  const rules = reducedRules();
  const lastGas = top + gases.length - 1;
  const gasRange = (index: number): string => range(gasColumn + index, top, lastGas);
  const ruleColumn = gasColumn + 3 + curveNames.length * curveParts.length + 1;
  const ruleRange = (index: number): string => range(ruleColumn + index, top, top + rules.length - 1);
  const splitColumn = ruleColumn + 7;
  const targetColumn = splitColumn + splitTable.lastWetBulb - splitTable.firstWetBulb + 2;
  const targetWidth = Math.max(...targetSuperheatRows.map(({ length }) => length));
  const looked = (index: number, otherwise: string): string =>
    `IF(§gas_row=0,${otherwise},INDEX(${gasRange(index)},§gas_row))`;
  const shared = [
    ...sharedFigures(placed, units),
    ['flammable', looked(1, '0')],
    ['untrained', flag('AND(§flammable=1,{flammable_trained}<>"yes")')],
    ...curveNames.flatMap((curve, c) =>
      curveParts.map((part, p) => [`${curve}_${part}`, looked(3 + c * curveParts.length + p, '0')] as const),
    ),
  ] as readonly (readonly [string, string])[];
  const named = new Map<string, string>([
    ...shared.map(([name], index) => [name, `Tables!$B$${String(top + index)}`] as const),
    ['gases', `Tables!${gasRange(0)}`],
    ['rule_keys', `Tables!${ruleRange(0)}`],
    ['rule_actions', `Tables!${ruleRange(1)}`],
    ['rule_touches', `Tables!${ruleRange(2)}`],
    ['rule_asks', `Tables!${ruleRange(3)}`],
    ['rule_words', `Tables!${ruleRange(4)}`],
    ['rule_sentences', `Tables!${ruleRange(5)}`],
    [
      'targets',
      `Tables!$${columnLetters(targetColumn)}$${String(top)}:$${columnLetters(targetColumn + targetWidth - 1)}$${String(top + targetSuperheatRows.length - 1)}`,
    ],
    [
      'splits',
      `Tables!$${columnLetters(splitColumn)}$${String(top)}:$${columnLetters(splitColumn + splitTable.lastWetBulb - splitTable.firstWetBulb)}$${String(top + splitTable.rows.length - 1)}`,
    ],
  ]);

  return { named, sheet };

  function sheet(): SheetRecipe {
    const cells: CellRecipe[] = [
      { at: 'A1', content: `Fits ${stampOfFits()}` },
      { at: 'A2', content: 'Last set in use' },
      { at: 'B2', content: formula(lastUsed(placed)) },
    ];
    shared.forEach(([name, text], index) => {
      const row = String(top + index);
      cells.push(
        { at: `A${row}`, content: name },
        { at: `B${row}`, content: formula(placed.spell(text, 'Tables', 'C', named)) },
      );
    });
    putRow(cells, gasColumn, top - 1, [
      'Gas',
      'Flammable',
      'Fit good to, K',
      ...curveNames.flatMap((curve) => curveParts.map((part) => `${curve} ${part}`)),
    ]);
    gases.forEach((entry, index) => {
      putRow(cells, gasColumn, top + index, [
        entry.gas.designation,
        isFlammable(entry.gas) ? 1 : 0,
        entry.gas.qualityGrade.doubtK,
        ...curveNames.flatMap((curve) => curveParts.map((part) => partOf(entry[curve], part))),
      ]);
    });
    putRow(cells, ruleColumn, top - 1, ['Rule', 'Action', 'Touches', 'Asks', 'Word', 'Sentence']);
    rules.forEach(({ key, action, touchesCircuit, word, sentence }, index) => {
      putRow(cells, ruleColumn, top + index, [
        key,
        action ?? '–',
        touchesCircuit ? 1 : 0,
        action === undefined ? 'care' : actions[action].asks,
        word,
        sentence,
      ]);
    });
    [...targetSplitRows.values()].forEach((values, row) => {
      const first = splitColumn + splitTable.lastWetBulb - splitTable.firstWetBulb - values.length + 1;
      putRow(cells, first, top + row, values);
    });
    targetSuperheatRows.forEach((values, row) => {
      values.forEach((content, index) => {
        const at = `${columnLetters(targetColumn + index)}${String(top + row)}`;
        if (content !== undefined) cells.push({ at, content });
      });
    });
    return {
      name: 'Tables',
      gridLines: true,
      widths: { A: 18 },
      cells,
      protect: true,
      print: { landscape: true, pagesWide: 1, pagesTall: 0 },
    };
  }
}

/** Number of the last set in which something is typed; zero in an empty sheet. */
function lastUsed(placed: PlacedLines): string {
  const row = String(placed.row('used'));
  return `MAX(${setColumns.map((column, index) => `Working!${column}${row}*${String(index + 1)}`).join(',')})`;
}

function range(column: number, from: number, to: number): string {
  const letters = columnLetters(column);
  return `$${letters}$${String(from)}:$${letters}$${String(to)}`;
}

function putRow(
  cells: CellRecipe[],
  column: number,
  row: number,
  values: readonly (string | number)[],
): void {
  values.forEach((content, index) => {
    cells.push({ at: `${columnLetters(column + index)}${String(row)}`, content });
  });
}

function partOf(series: Series, part: string): number {
  const power = Number(part);
  if (Number.isInteger(power)) return series.coefficients[power] ?? 0;
  return series[part as 'lowest' | 'highest' | 'middle' | 'half'];
}

/** What the sets share, worked out once from what is said once. */
function sharedFigures(placed: PlacedLines, units: SheetUnits): readonly (readonly [string, string])[] {
  const limit = limitsOf(units);
  const [from, to] = placed.onceRows;
  const checks = `Checks!$C$${String(from)}:$C$${String(to)}`;
  const found = (code: number): string => `COUNTIF(${checks},${String(code)})`;
  const flags = (letters: string): string =>
    `Visit!$${letters}$${String(from)}:$${letters}$${String(placed.lastVisitRow)}`;
  const volts = 'SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(UPPER({rated_volts}&"")," ",""),"V",""),"-","/")';
  const instrument = (
    key: string,
    si: number,
    quantity: 'pressureDifference' | 'temperatureDifference',
  ): string => `IF(${isNumber(`{${key}}`)},{${key}},${units.text(si, quantity)})`;
  return [
    ['site_atmosphere', atmosphere(units)],
    [
      'atmosphere',
      `IF(${isNumber('{barometer}')},IF(AND({barometer}>=${limit.lowestBarometer},{barometer}<=${limit.highestBarometer}),{barometer}*${plain(barometerFactor(units))},§site_atmosphere),§site_atmosphere)`,
    ],
    ['gauge_zero', 'IF({gauge_reference}="absolute",0,§atmosphere)'],
    ['low_side', `IF(${isNumber('{low_side_design}')},{low_side_design}+§site_atmosphere,"")`],
    ['gas_row', 'IF({refrigerant}="",0,IFERROR(MATCH({refrigerant},§gases,0),0))'],
    [
      'rated_first',
      `IF(${isNumber('{rated_volts}')},{rated_volts},IFERROR(VALUE(LEFT(${volts},FIND("/",${volts}&"/")-1)),0))`,
    ],
    [
      'rated_second',
      `IF(${isNumber('{rated_volts}')},{rated_volts},IFERROR(VALUE(MID(${volts},FIND("/",${volts})+1,9)),§rated_first))`,
    ],
    [
      'rated_low',
      `IF(AND(MIN(§rated_first,§rated_second)>=${String(plausibleVolts.lowest)},MAX(§rated_first,§rated_second)<=${String(plausibleVolts.highest)}),MIN(§rated_first,§rated_second),0)`,
    ],
    ['rated_high', 'MAX(§rated_first,§rated_second)'],
    ['scale_step', `IF(${isNumber('{scale_step}')},{scale_step},${limit.scaleStep})`],
    ['suction_doubt', instrument('suction_doubt', defaultInstruments.suctionGaugePa, 'pressureDifference')],
    ['liquid_doubt', instrument('liquid_doubt', defaultInstruments.liquidGaugePa, 'pressureDifference')],
    ['pipe_doubt', instrument('pipe_doubt', defaultInstruments.probeK, 'temperatureDifference')],
    ['air_doubt', instrument('air_doubt', defaultInstruments.airProbeK, 'temperatureDifference')],
    ['unread_once', found(unreadable)],
    ['out_visit', found(outOfLimits.visit)],
    ['out_record_once', found(outOfLimits.record)],
    ['first_flagged', `IFERROR(INDEX(${flags('A')},MATCH(1,${flags(flagColumn)},0)),"")`],
  ];
}

/** The standard atmosphere, its exponent read off the function itself. */
function atmosphere(units: SheetUnits): string {
  const groundK = standardAtmosphereTemperatureK(0);
  const highM = 1000;
  const highK = standardAtmosphereTemperatureK(highM);
  const exponent =
    Math.log(standardAtmospherePa(highM) / standardAtmospherePa(0)) / Math.log(highK / groundK);
  const perUnit = (1 - highK / groundK) / units.value(highM, 'altitude');
  const limit = limitsOf(units);
  const ground = units.text(standardAtmospherePa(0), 'pressureDifference');
  const usable = `AND({elevation}>=${limit.lowestElevation},{elevation}<=${limit.highestElevation})`;
  return `IF(${isNumber('{elevation}')},IF(${usable},${ground}*(1-${perUnit.toFixed(18)}*{elevation})^${plain(Number(exponent.toFixed(9)))},${ground}),${ground})`;
}

/** Barometer unit in the unit of gauges. */
function barometerFactor(units: SheetUnits): number {
  const pa = 100_000;
  return Number(
    (units.value(pa, 'pressureDifference') / units.value(pa, 'absolutePressure')).toPrecision(12),
  );
}
