/**
 * What a number can measure, and the units it may be written in.
 * `expression` is what the conversion library understands; `names` are the spellings people type (compared without case).
 */
export interface Unit {
  /** How the unit is written in results, headings and messages. */
  readonly symbol: string;
  /** Other accepted spellings. */
  readonly names?: readonly string[];
  readonly expression: string;
  /** Pressure only: counted from the local atmosphere or from vacuum. */
  readonly reference?: 'gauge' | 'absolute';
  /** Pressure only: counted downwards from the atmosphere ("20 inHg vac"). */
  readonly downwards?: true;
  /** What the unit reads where the SI unit reads zero, when their zero points differ for this quantity. */
  readonly zero?: number;
  /** Decimals that make sense when a figure is written into a sentence. */
  readonly decimals: number;
}

export interface QuantityDefinition {
  /** The SI unit in which `src/` computes. */
  readonly si: string;
  readonly us: string;
  readonly metric: string;
  readonly units: readonly Unit[];
}

const psi = { expression: 'psi', decimals: 1 } as const;
const kilopascal = { expression: 'kPa', decimals: 0 } as const;
const bar = { expression: 'bar', decimals: 2 } as const;
const megapascal = { expression: 'MPa', decimals: 3 } as const;
const pascal = { expression: 'Pa', decimals: 0 } as const;
const inchOfMercury = { expression: '3386.389 Pa', decimals: 1 } as const;

const absolutePressures: readonly Unit[] = [
  { symbol: 'psia', names: ['psi abs', 'psi absolute', 'psi a'], reference: 'absolute', ...psi },
  {
    symbol: 'kPa abs',
    names: ['kpaa', 'kpa absolute', 'kpa a', 'kpa(a)'],
    reference: 'absolute',
    ...kilopascal,
  },
  { symbol: 'bar abs', names: ['bara', 'bar absolute', 'bar a', 'bar(a)'], reference: 'absolute', ...bar },
  { symbol: 'MPa abs', names: ['mpaa', 'mpa absolute', 'mpa(a)'], reference: 'absolute', ...megapascal },
  { symbol: 'Pa abs', names: ['paa', 'pa absolute', 'pa(a)'], reference: 'absolute', ...pascal },
];

const kelvinDifference: Unit = {
  symbol: 'K',
  names: ['kelvin', 'degc', '°c', 'c', 'deg c'],
  expression: 'K',
  decimals: 1,
};
const fahrenheitDifference: Unit = {
  symbol: 'degF',
  names: ['°f', 'f', 'deg f', 'fahrenheit'],
  expression: 'K * 5 / 9',
  decimals: 1,
};

const ounce: Unit = {
  symbol: 'oz',
  names: ['ounce', 'ounces', 'oz wt', 'oz.', 'ozs', 'oz (weight)', 'oz av'],
  expression: 'oz',
  decimals: 1,
};
const gram: Unit = { symbol: 'g', names: ['gram', 'grams', 'gr.'], expression: 'g', decimals: 0 };
const pound: Unit = {
  symbol: 'lb',
  names: ['lbs', 'pound', 'pounds', 'lb.', 'lbm'],
  expression: 'lb',
  decimals: 2,
};
const kilogram: Unit = {
  symbol: 'kg',
  names: ['kilogram', 'kilograms', 'kilo'],
  expression: 'kg',
  decimals: 3,
};

const foot: Unit = { symbol: 'ft', names: ['foot', 'feet', "'"], expression: 'ft', decimals: 0 };
const metre: Unit = {
  symbol: 'm',
  names: ['metre', 'metres', 'meter', 'meters'],
  expression: 'm',
  decimals: 0,
};
const inch: Unit = { symbol: 'in', names: ['inch', 'inches', '"', 'in.'], expression: 'inch', decimals: 3 };
const millimetre: Unit = {
  symbol: 'mm',
  names: ['millimetre', 'millimeter', 'millimetres'],
  expression: 'mm',
  decimals: 1,
};

const watt: Unit = { symbol: 'W', names: ['watt', 'watts'], expression: 'W', decimals: 0 };
const kilowatt: Unit = { symbol: 'kW', names: ['kilowatt', 'kilowatts'], expression: 'kW', decimals: 2 };

const one = (symbol: string, decimals: number, names: readonly string[] = []): QuantityDefinition => ({
  si: symbol,
  us: symbol,
  metric: symbol,
  units: [{ symbol, names, expression: '', decimals }],
});

const table = {
  /** Read on a gauge unless the unit says absolute; absolute pascal inside. */
  pressure: {
    si: 'Pa abs',
    us: 'psig',
    metric: 'kPa',
    units: [
      {
        symbol: 'psig',
        names: ['psi', 'psi g', 'psi gauge', 'psi(g)', 'lb/in2'],
        reference: 'gauge',
        ...psi,
      },
      { symbol: 'kPa', names: ['kpag', 'kpa g', 'kpa gauge', 'kpa(g)'], reference: 'gauge', ...kilopascal },
      { symbol: 'bar', names: ['barg', 'bar g', 'bar gauge', 'bar(g)'], reference: 'gauge', ...bar },
      { symbol: 'MPa', names: ['mpag', 'mpa gauge', 'mpa(g)'], reference: 'gauge', ...megapascal },
      { symbol: 'Pa', names: ['pag', 'pa gauge', 'pa(g)'], reference: 'gauge', ...pascal },
      {
        symbol: 'inHg vac',
        names: ['inhg vacuum', 'inhg', 'in hg', 'in hg vac'],
        reference: 'gauge',
        downwards: true,
        ...inchOfMercury,
      },
      ...absolutePressures,
    ],
  },
  /** Counted from vacuum whatever is written: barometers, air pressure. */
  absolutePressure: {
    si: 'Pa abs',
    us: 'psia',
    metric: 'kPa abs',
    units: [
      { symbol: 'psia', names: ['psi', 'psi abs', 'psi absolute'], expression: 'psi', decimals: 3 },
      { symbol: 'kPa abs', names: ['kpa', 'kpaa', 'kpa absolute'], expression: 'kPa', decimals: 2 },
      { symbol: 'bar abs', names: ['bar', 'bara', 'bar absolute'], expression: 'bar', decimals: 4 },
      { symbol: 'Pa abs', names: ['pa', 'paa', 'pa absolute'], expression: 'Pa', decimals: 0 },
      { symbol: 'hPa', names: ['mbar', 'hpa abs'], expression: 'hPa', decimals: 1 },
      { symbol: 'inHg', names: ['in hg'], ...inchOfMercury, decimals: 2 },
    ],
  },
  /** A difference of two pressures: gauge accuracy, decay. */
  pressureDifference: {
    si: 'Pa',
    us: 'psi',
    metric: 'kPa',
    units: [
      { symbol: 'psi', names: ['psid'], ...psi },
      { symbol: 'kPa', ...kilopascal },
      { symbol: 'bar', ...bar },
      { symbol: 'Pa', ...pascal },
    ],
  },
  /** Deep vacuum, counted from zero. */
  vacuum: {
    si: 'Pa',
    us: 'micron',
    metric: 'Pa',
    units: [
      {
        symbol: 'micron',
        names: ['microns', 'µm', 'um', 'um hg', 'µmhg', 'mtorr', 'millitorr'],
        expression: '101325 Pa / 760000',
        decimals: 0,
      },
      { symbol: 'Pa', names: ['pascal'], expression: 'Pa', decimals: 1 },
      { symbol: 'torr', names: ['mmhg'], expression: '101325 Pa / 760', decimals: 3 },
      { symbol: 'mbar', names: ['hpa'], expression: 'hPa', decimals: 3 },
      // Absolute like all of them: a dial that counts down from the air cannot show a deep vacuum.
      { symbol: 'inHg', names: ['in hg'], ...inchOfMercury, decimals: 3 },
    ],
  },
  temperature: {
    si: 'K',
    us: 'degF',
    metric: 'degC',
    units: [
      { symbol: 'degF', names: ['°f', 'f', 'deg f', 'fahrenheit'], expression: 'degF', decimals: 1 },
      { symbol: 'degC', names: ['°c', 'c', 'deg c', 'celsius'], expression: 'degC', decimals: 1 },
      { symbol: 'K', names: ['kelvin'], expression: 'K', decimals: 2 },
    ],
  },
  temperatureDifference: {
    si: 'K',
    us: 'degF',
    metric: 'K',
    units: [fahrenheitDifference, kelvinDifference],
  },
  /** Charges and additions: what a small scale reads. */
  mass: { si: 'kg', us: 'oz', metric: 'g', units: [ounce, gram, pound, kilogram] },
  /** Cylinders: what a big scale reads. */
  cylinderMass: { si: 'kg', us: 'lb', metric: 'kg', units: [pound, kilogram, ounce, gram] },
  massRate: {
    si: 'kg/s',
    us: 'oz/year',
    metric: 'g/year',
    units: [
      { symbol: 'oz/year', names: ['oz/yr', 'oz a year'], expression: 'oz / (365 day)', decimals: 1 },
      { symbol: 'g/year', names: ['g/yr', 'g a year'], expression: 'g / (365 day)', decimals: 0 },
    ],
  },
  massPerLength: {
    si: 'kg/m',
    us: 'oz/ft',
    metric: 'g/m',
    units: [
      { symbol: 'oz/ft', expression: 'oz / ft', decimals: 2 },
      { symbol: 'g/m', expression: 'g / m', decimals: 1 },
    ],
  },
  altitude: { si: 'm', us: 'ft', metric: 'm', units: [foot, metre] },
  length: {
    si: 'm',
    us: 'ft',
    metric: 'm',
    units: [{ ...foot, decimals: 1 }, { ...metre, decimals: 2 }, inch, millimetre],
  },
  diameter: { si: 'm', us: 'in', metric: 'mm', units: [inch, millimetre] },
  area: {
    si: 'm2',
    us: 'ft2',
    metric: 'm2',
    units: [
      { symbol: 'ft2', names: ['sq ft', 'sqft', 'ft²'], expression: 'ft^2', decimals: 1 },
      { symbol: 'm2', names: ['sq m', 'm²'], expression: 'm^2', decimals: 2 },
    ],
  },
  volume: {
    si: 'm3',
    us: 'ft3',
    metric: 'm3',
    units: [
      { symbol: 'ft3', names: ['cu ft', 'ft³'], expression: 'ft^3', decimals: 3 },
      { symbol: 'm3', names: ['cu m', 'm³'], expression: 'm^3', decimals: 4 },
      { symbol: 'mL', names: ['ml', 'cc', 'cm3'], expression: 'cm^3', decimals: 1 },
      { symbol: 'L', names: ['l', 'litre', 'liter'], expression: 'dm^3', decimals: 3 },
    ],
  },
  airflow: {
    si: 'm3/s',
    us: 'cfm',
    metric: 'm3/h',
    units: [
      { symbol: 'cfm', names: ['ft3/min'], expression: 'ft^3 / minute', decimals: 0 },
      { symbol: 'm3/h', names: ['m³/h', 'cmh'], expression: 'm^3 / hour', decimals: 0 },
      { symbol: 'L/s', names: ['l/s'], expression: 'dm^3 / s', decimals: 0 },
      { symbol: 'm3/s', names: ['m³/s'], expression: 'm^3 / s', decimals: 3 },
    ],
  },
  airSpeed: {
    si: 'm/s',
    us: 'fpm',
    metric: 'm/s',
    units: [
      { symbol: 'fpm', names: ['ft/min'], expression: 'ft / minute', decimals: 0 },
      { symbol: 'm/s', expression: 'm / s', decimals: 2 },
    ],
  },
  /** Cooling and heating. */
  heatRate: {
    si: 'W',
    us: 'Btu/h',
    metric: 'W',
    units: [
      { symbol: 'Btu/h', names: ['btuh', 'btu/hr', 'btu'], expression: 'BTU / hour', decimals: 0 },
      watt,
      kilowatt,
      { symbol: 'ton', names: ['tons'], expression: '12000 BTU / hour', decimals: 2 },
    ],
  },
  power: { si: 'W', us: 'W', metric: 'W', units: [watt, kilowatt] },
  /** Cooling over electric power. */
  coolingEfficiency: {
    si: 'W/W',
    us: 'Btu/Wh',
    metric: 'W/W',
    units: [
      { symbol: 'Btu/Wh', names: ['eer', 'btu/w', 'btu/(w h)'], expression: 'BTU / (W hour)', decimals: 1 },
      { symbol: 'W/W', names: ['cop'], expression: '', decimals: 2 },
    ],
  },
  energyPrice: {
    si: '/J',
    us: '/kWh',
    metric: '/kWh',
    units: [{ symbol: '/kWh', names: ['per kwh'], expression: '1 / kWh', decimals: 3 }],
  },
  massPrice: {
    si: '/kg',
    us: '/oz',
    metric: '/kg',
    units: [
      { symbol: '/oz', names: ['per oz'], expression: '1 / oz', decimals: 2 },
      { symbol: '/lb', names: ['per lb'], expression: '1 / lb', decimals: 2 },
      { symbol: '/kg', names: ['per kg'], expression: '1 / kg', decimals: 2 },
    ],
  },
  money: one('money', 2),
  density: {
    si: 'kg/m3',
    us: 'lb/ft3',
    metric: 'kg/m3',
    units: [
      { symbol: 'lb/ft3', names: ['lb/ft³'], expression: 'lb / ft^3', decimals: 3 },
      { symbol: 'kg/m3', names: ['kg/m³'], expression: 'kg / m^3', decimals: 2 },
    ],
  },
  specificVolume: {
    si: 'm3/kg',
    us: 'ft3/lb',
    metric: 'm3/kg',
    units: [
      { symbol: 'ft3/lb', expression: 'ft^3 / lb', decimals: 3 },
      { symbol: 'm3/kg', expression: 'm^3 / kg', decimals: 4 },
    ],
  },
  specificEnthalpy: {
    si: 'J/kg',
    us: 'Btu/lb',
    metric: 'kJ/kg',
    units: [
      { symbol: 'Btu/lb', expression: 'BTU / lb', decimals: 2 },
      { symbol: 'kJ/kg', expression: 'kJ / kg', decimals: 2 },
    ],
  },
  /** Counted from dry air at 0 degC in kJ/kg and from dry air at 0 degF in Btu/lb: 0.240 Btu/(lb degF) over 32 degF apart. */
  airEnthalpy: {
    si: 'J/kg',
    us: 'Btu/lb',
    metric: 'kJ/kg',
    units: [
      { symbol: 'Btu/lb', expression: 'BTU / lb', zero: 7.68, decimals: 2 },
      { symbol: 'kJ/kg', expression: 'kJ / kg', decimals: 2 },
    ],
  },
  /** Water over dry air, by mass. */
  humidityRatio: {
    si: 'kg/kg',
    us: 'lb/lb',
    metric: 'kg/kg',
    units: [
      { symbol: 'lb/lb', names: ['kg/kg'], expression: '', decimals: 5 },
      { symbol: 'kg/kg', names: [], expression: '', decimals: 5 },
      { symbol: 'gr/lb', names: ['grains', 'grains/lb'], expression: 'grain / lb', decimals: 1 },
      { symbol: 'g/kg', expression: 'g / kg', decimals: 2 },
    ],
  },
  /** A share, written as a number of percent. */
  percent: {
    si: '1',
    us: '%',
    metric: '%',
    units: [{ symbol: '%', names: ['percent', 'pct'], expression: '0.01', decimals: 1 }],
  },
  percentPerYear: {
    si: '1/year',
    us: '%/year',
    metric: '%/year',
    units: [{ symbol: '%/year', names: ['%/yr', '% a year'], expression: '0.01', decimals: 2 }],
  },
  voltage: {
    si: 'V',
    us: 'V',
    metric: 'V',
    units: [{ symbol: 'V', names: ['volt', 'volts', 'vac'], expression: 'V', decimals: 1 }],
  },
  current: {
    si: 'A',
    us: 'A',
    metric: 'A',
    units: [{ symbol: 'A', names: ['amp', 'amps', 'ampere'], expression: 'A', decimals: 1 }],
  },
  capacitance: {
    si: 'F',
    us: 'uF',
    metric: 'uF',
    units: [{ symbol: 'uF', names: ['µf', 'mfd', 'microfarad', 'μf'], expression: 'uF', decimals: 1 }],
  },
  frequency: {
    si: 'Hz',
    us: 'Hz',
    metric: 'Hz',
    units: [{ symbol: 'Hz', names: ['hertz'], expression: 'Hz', decimals: 0 }],
  },
  resistancePerLength: {
    si: 'ohm/m',
    us: 'ohm/kft',
    metric: 'ohm/km',
    units: [
      { symbol: 'ohm/kft', expression: 'ohm / (1000 ft)', decimals: 2 },
      { symbol: 'ohm/km', expression: 'ohm / km', decimals: 2 },
    ],
  },
  /** Waits and settling times. */
  minutes: {
    si: 's',
    us: 'min',
    metric: 'min',
    units: [
      { symbol: 'min', names: ['minute', 'minutes', 'mins'], expression: 'minute', decimals: 0 },
      { symbol: 'h', names: ['hour', 'hours', 'hr', 'hrs'], expression: 'hour', decimals: 1 },
      { symbol: 's', names: ['sec', 'second', 'seconds'], expression: 's', decimals: 0 },
    ],
  },
  hours: {
    si: 's',
    us: 'h',
    metric: 'h',
    units: [{ symbol: 'h', names: ['hour', 'hours', 'hr', 'hrs'], expression: 'hour', decimals: 0 }],
  },
  days: one('days', 0, ['day', 'd']),
  years: one('years', 1, ['year', 'yr', 'yrs']),
  carbonDioxideMass: {
    si: 'kg',
    us: 'kg CO2e',
    metric: 'kg CO2e',
    units: [{ symbol: 'kg CO2e', names: ['kg', 'kg co2'], expression: 'kg', decimals: 1 }],
  },
  /** A pure number. */
  ratio: one('', 2),
  count: one('', 0),
} as const satisfies Record<string, QuantityDefinition>;

export type Quantity = keyof typeof table;

export const quantities: Readonly<Record<Quantity, QuantityDefinition>> = table;
