import { describe, expect, it } from 'vitest';
import { findUnit, fromSi, toSi } from '../../src/units/conversion.ts';
import type { Quantity } from '../../src/units/quantities.ts';
import { quantities } from '../../src/units/quantities.ts';

/*
 * How the units are written in the field, and what one of each is in SI. Values by definition: international pound 0.45359237
 * kg, foot 0.3048 m, International Table Btu 1055.05585262 J, torr 101325/760 Pa, grain 64.79891 mg, standard gravity
 * 9.80665 m/s2; conventional inch of mercury 3386.389 Pa (NIST SP 811). An atmosphere of 100 kPa, so that gauge units show.
 */
const atmospherePa = 100_000;
const pound = 0.45359237;
const ounce = pound / 16;
const foot = 0.3048;
const psi = (pound * 9.80665) / 0.0254 ** 2;
const btu = 1055.05585262;
const micron = 101_325 / 760_000;
const kelvinPerF = 5 / 9;

const spelled: readonly [Quantity, number, readonly string[]][] = [
  ['pressure', atmospherePa + psi, ['psig', 'psi', 'psi g', 'psi gauge', 'psi(g)', 'lb/in2']],
  ['pressure', atmospherePa + 1e3, ['kPa', 'kpag', 'kpa g', 'kpa gauge', 'kpa(g)']],
  ['pressure', atmospherePa + 1e5, ['bar', 'barg', 'bar g', 'bar gauge', 'bar(g)']],
  ['pressure', atmospherePa + 1e6, ['MPa', 'mpag', 'mpa gauge', 'mpa(g)']],
  ['pressure', atmospherePa + 1, ['Pa', 'pag', 'pa gauge', 'pa(g)']],
  ['pressure', atmospherePa - 3386.389, ['inHg vac', 'inhg vacuum', 'inHg', 'in hg', 'in hg vac']],
  ['pressure', psi, ['psia', 'psi abs', 'psi absolute', 'psi a']],
  ['pressure', 1e3, ['kPa abs', 'kPaa', 'kpa absolute', 'kpa a', 'kpa(a)']],
  ['pressure', 1e5, ['bar abs', 'bara', 'bar absolute', 'bar a', 'bar(a)']],
  ['pressure', 1e6, ['MPa abs', 'mpaa', 'mpa absolute', 'mpa(a)']],
  ['pressure', 1, ['Pa abs', 'paa', 'pa absolute', 'pa(a)']],
  ['absolutePressure', psi, ['psia', 'psi', 'psi abs', 'psi absolute']],
  ['absolutePressure', 1e3, ['kPa abs', 'kPa', 'kpaa', 'kpa absolute']],
  ['absolutePressure', 1e5, ['bar abs', 'bar', 'bara', 'bar absolute']],
  ['absolutePressure', 1, ['Pa abs', 'Pa', 'paa', 'pa absolute']],
  ['absolutePressure', 100, ['hPa', 'mbar', 'hpa abs']],
  ['absolutePressure', 3386.389, ['inHg', 'in hg']],
  ['pressureDifference', psi, ['psi', 'psid']],
  ['pressureDifference', 1e3, ['kPa']],
  ['pressureDifference', 1e5, ['bar']],
  ['pressureDifference', 1, ['Pa']],
  ['vacuum', micron, ['micron', 'microns', 'µm', 'um', 'um hg', 'µmhg', 'mtorr', 'millitorr']],
  ['vacuum', 1, ['Pa', 'pascal']],
  ['vacuum', 1000 * micron, ['torr', 'mmHg']],
  ['vacuum', 100, ['mbar', 'hPa']],
  ['temperature', (459.67 + 1) * kelvinPerF, ['degF', '°F', 'F', 'deg F', 'Fahrenheit']],
  ['temperature', 274.15, ['degC', '°C', 'C', 'deg C', 'Celsius']],
  ['temperature', 1, ['K', 'kelvin']],
  ['temperatureDifference', kelvinPerF, ['degF', '°F', 'F', 'deg F', 'Fahrenheit']],
  ['temperatureDifference', 1, ['K', 'kelvin', 'degC', '°C', 'C', 'deg C']],
  ['mass', ounce, ['oz', 'ounce', 'ounces', 'oz wt', 'oz.', 'ozs', 'oz (weight)', 'oz av']],
  ['mass', 1e-3, ['g', 'gram', 'grams', 'gr.']],
  ['mass', pound, ['lb', 'lbs', 'pound', 'pounds', 'lb.', 'lbm']],
  ['mass', 1, ['kg', 'kilogram', 'kilograms', 'kilo']],
  ['cylinderMass', pound, ['lb', 'pounds']],
  ['cylinderMass', 1, ['kg']],
  ['cylinderMass', ounce, ['oz']],
  ['cylinderMass', 1e-3, ['g']],
  ['massRate', ounce / (365 * 86_400), ['oz/year', 'oz/yr', 'oz a year']],
  ['massRate', 1e-3 / (365 * 86_400), ['g/year', 'g/yr', 'g a year']],
  ['massPerLength', ounce / foot, ['oz/ft']],
  ['massPerLength', 1e-3, ['g/m']],
  ['altitude', foot, ['ft', 'foot', 'feet', "'"]],
  ['altitude', 1, ['m', 'metre', 'metres', 'meter', 'meters']],
  ['length', foot, ['ft', 'feet']],
  ['length', 1, ['m']],
  ['length', 0.0254, ['in', 'inch', 'inches', '"', 'in.']],
  ['length', 1e-3, ['mm', 'millimetre', 'millimeter', 'millimetres']],
  ['diameter', 0.0254, ['in']],
  ['diameter', 1e-3, ['mm']],
  ['area', foot ** 2, ['ft2', 'sq ft', 'sqft', 'ft²']],
  ['area', 1, ['m2', 'sq m', 'm²']],
  ['volume', foot ** 3, ['ft3', 'cu ft', 'ft³']],
  ['volume', 1, ['m3', 'cu m', 'm³']],
  ['volume', 1e-6, ['mL', 'cc', 'cm3']],
  ['volume', 1e-3, ['L', 'litre', 'liter']],
  ['airflow', foot ** 3 / 60, ['cfm', 'ft3/min']],
  ['airflow', 1 / 3600, ['m3/h', 'm³/h', 'cmh']],
  ['airflow', 1e-3, ['L/s']],
  ['airflow', 1, ['m3/s', 'm³/s']],
  ['airSpeed', foot / 60, ['fpm', 'ft/min']],
  ['airSpeed', 1, ['m/s']],
  ['heatRate', btu / 3600, ['Btu/h', 'btuh', 'btu/hr', 'btu']],
  ['heatRate', 1, ['W', 'watt', 'watts']],
  ['heatRate', 1000, ['kW', 'kilowatt', 'kilowatts']],
  ['heatRate', (12_000 * btu) / 3600, ['ton', 'tons']],
  ['power', 1, ['W']],
  ['power', 1000, ['kW']],
  ['coolingEfficiency', btu / 3600, ['Btu/Wh', 'EER', 'btu/w', 'btu/(w h)']],
  ['coolingEfficiency', 1, ['W/W', 'COP']],
  ['energyPrice', 1 / 3.6e6, ['/kWh', 'per kWh']],
  ['massPrice', 1 / ounce, ['/oz', 'per oz']],
  ['massPrice', 1 / pound, ['/lb', 'per lb']],
  ['massPrice', 1, ['/kg', 'per kg']],
  ['money', 1, ['money']],
  ['density', pound / foot ** 3, ['lb/ft3', 'lb/ft³']],
  ['density', 1, ['kg/m3', 'kg/m³']],
  ['specificVolume', foot ** 3 / pound, ['ft3/lb']],
  ['specificVolume', 1, ['m3/kg']],
  ['specificEnthalpy', 2326, ['Btu/lb']],
  ['specificEnthalpy', 1000, ['kJ/kg']],
  ['airEnthalpy', (1 - 0.24 * 32) * 2326, ['Btu/lb']],
  ['airEnthalpy', 1000, ['kJ/kg']],
  ['humidityRatio', 1, ['lb/lb', 'kg/kg']],
  ['humidityRatio', 1 / 7000, ['gr/lb', 'grains', 'grains/lb']],
  ['humidityRatio', 1e-3, ['g/kg']],
  ['percent', 0.01, ['%', 'percent', 'pct']],
  ['percentPerYear', 0.01, ['%/year', '%/yr', '% a year']],
  ['voltage', 1, ['V', 'volt', 'volts', 'VAC']],
  ['current', 1, ['A', 'amp', 'amps', 'ampere']],
  ['capacitance', 1e-6, ['uF', 'µF', 'MFD', 'microfarad', 'μF']],
  ['frequency', 1, ['Hz', 'hertz']],
  ['resistancePerLength', 1 / (1000 * foot), ['ohm/kft']],
  ['resistancePerLength', 1e-3, ['ohm/km']],
  ['minutes', 60, ['min', 'minute', 'minutes', 'mins']],
  ['minutes', 3600, ['h', 'hour', 'hours', 'hr', 'hrs']],
  ['minutes', 1, ['s', 'sec', 'second', 'seconds']],
  ['hours', 3600, ['h', 'hour', 'hours', 'hr', 'hrs']],
  ['days', 1, ['days', 'day', 'd']],
  ['years', 1, ['years', 'year', 'yr', 'yrs']],
  ['carbonDioxideMass', 1, ['kg CO2e', 'kg', 'kg CO2']],
];

describe('units as they are written', () => {
  it.each(spelled)('%s: one is %d in SI: %s', (quantity, expected, names) => {
    for (const name of names) {
      const unit = findUnit(quantity, name);
      expect(unit, `${quantity} in ${name}`).toBeDefined();
      if (unit) expect(toSi(1, unit, atmospherePa) / expected, name).toBeCloseTo(1, 9);
      if (unit) expect(fromSi(expected, unit, atmospherePa), name).toBeCloseTo(1, 9);
    }
  });

  it('has no spelling that does not stand in the list above', () => {
    const listed = new Set(spelled.flatMap(([, , names]) => names).map((name) => name.toLowerCase()));
    const known = Object.values(quantities)
      .flatMap(({ units }) => units)
      .flatMap(({ symbol, names }) => [symbol, ...(names ?? [])]);
    expect(known.filter((name) => name !== '' && !listed.has(name.toLowerCase()))).toEqual([]);
  });

  it.each<[Quantity, string]>([
    ['mass', 'fl oz'],
    ['mass', ''],
    ['mass', 'stone'],
    ['temperature', 'rankine'],
    ['pressure', 'psid'],
    ['pressureDifference', 'psig'],
  ])('knows no %s in "%s"', (quantity, name) => {
    expect(findUnit(quantity, name)).toBeUndefined();
  });

  it('passes over case and spaces', () => {
    expect(findUnit('pressure', '  PSI   Gauge ')?.symbol).toBe('psig');
  });

  it('offers for both systems a unit that it knows, and names its own SI unit', () => {
    for (const [quantity, { us, metric, si }] of Object.entries(quantities) as [
      Quantity,
      (typeof quantities)[Quantity],
    ][]) {
      expect(findUnit(quantity, us), quantity).toBeDefined();
      expect(findUnit(quantity, metric), quantity).toBeDefined();
      // In its own SI unit a value is what it is, where that unit can be written.
      const own = si === '' ? undefined : findUnit(quantity, si);
      if (own) expect(toSi(3, own, 0), quantity).toBeCloseTo(3, 12);
    }
  });
});
