import { refrigerants, saturationPressurePa } from '../../../src/refrigerants/index.ts';
import type { Refrigerant } from '../../../src/refrigerants/index.ts';
import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../../../src/units/trade.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import type { SheetUnits } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';

type Cells = Record<string, number | string>;

/** What the visits are made to reach. */
export type Mood =
  /** Anything at all, gates closed as often as not. */
  | 'anything'
  /** Gates open, a sound person, readings around a unit short of gas: ounces come up. */
  | 'short of gas'
  /** Recovery, pressure test, vacuum, weighing in. */
  | 'opened'
  /** Everything speaks for low charge, and the mass is known as often as not. */
  | 'clearly short';

interface Site {
  readonly refrigerant: Refrigerant;
  readonly ratedV: number;
  readonly nameplateKg: number;
  /** What its gauges count from. */
  readonly fromPa: number;
  readonly mood: Mood;
}

/** Random visits as one might type them: the same seed, the same visits. */
export class RandomVisits {
  readonly units: SheetUnits;
  #state: number;

  constructor(units: SheetUnits, seed: number) {
    this.units = units;
    this.#state = seed;
  }

  random(): number {
    this.#state = (this.#state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return this.#state / 4_294_967_296;
  }

  between(low: number, high: number): number {
    return low + this.random() * (high - low);
  }

  pick<T>(list: readonly T[]): T {
    const one = list[Math.floor(this.random() * list.length)];
    if (one === undefined) throw new Error('nothing to pick from');
    return one;
  }

  mostly<T>(share: number, usual: T, others: readonly T[]): T {
    return this.random() < share ? usual : this.pick(others);
  }

  visit(mood: Mood, number: number): TypedVisit {
    const gas = this.mostly(
      0.6,
      'R-410A',
      refrigerants().map(({ designation }) => designation),
    );
    const refrigerant = refrigerants().find(({ designation }) => designation === gas);
    if (refrigerant === undefined) throw new Error(gas);
    const elevationM = this.between(0, 2500);
    const anything = mood === 'anything';
    const rated = this.mostly(0.7, '115', ['208/230', '230', '115 V']);
    const nameplateKg = this.between(0.2, 0.6);
    const once: Cells = {
      unit_id: `U-${String(number)}`,
      visit_id: `V-${String(number)}`,
      technician_id: 'MOF',
      refrigerant: gas,
      nameplate: this.typed(nameplateKg, 'mass'),
      rated_volts: rated,
      metering: this.mostly(0.85, 'capillary', ['orifice', 'valve']),
      elevation: this.typed(elevationM, 'altitude'),
      low_side_design: this.typed(1_700_000, 'pressureDifference'),
      status: this.mostly(0.97, 'in use', ['stored', 'retired']),
      gauge_reference: this.mostly(0.8, 'gauge', ['absolute', 'gauge zeroed at site']),
    };
    this.put(once, 'cert_type', 0.95, () =>
      this.mostly(anything ? 0.8 : 0.95, 'Universal', ['I', 'II', 'III']),
    );
    this.put(once, 'flammable_trained', 0.7, () => this.mostly(0.7, 'yes', ['no']));
    this.put(once, 'taps_fitted', 0.9, () => this.mostly(0.5, 1, [0, 2]));
    this.put(once, 'warranty_end', 0.1, () => this.pick([45_000, 46_236, 47_000]));
    this.put(once, 'topped_up', 0.8, () => this.mostly(0.7, 'no', ['yes']));
    this.put(once, 'customer_agrees', 0.5, () => this.mostly(0.8, 'yes', ['no']));
    this.put(once, 'rated_amps', 0.7, () => 9.4);
    this.put(once, 'barometer', 0.1, () => this.typed(this.between(75_000, 103_000), 'absolutePressure', 1));
    this.put(once, 'scale_step', 0.8, () =>
      this.mostly(0.8, this.typed(0.0028, 'mass'), [this.typed(0.03, 'mass'), this.typed(0.15, 'mass')]),
    );
    this.put(once, 'suction_doubt', 0.5, () => this.typed(this.between(3000, 24_000), 'pressureDifference'));
    this.put(once, 'liquid_doubt', 0.5, () => this.typed(this.between(6000, 48_000), 'pressureDifference'));
    this.put(once, 'pipe_doubt', 0.5, () => this.typed(this.between(0.3, 1), 'temperatureDifference'));
    const absolute = once['gauge_reference'] === 'absolute';
    const site = {
      refrigerant,
      ratedV: rated.startsWith('115') ? 115 : 220,
      nameplateKg,
      fromPa: absolute ? 0 : standardAtmospherePa(elevationM),
      mood,
    };
    if (mood === 'clearly short') {
      const sets = Array.from({ length: 1 + Math.floor(this.random() * 4) }, (_, index) =>
        this.clearlyShort(index, site),
      );
      const sound = {
        metering: 'capillary',
        status: 'in use',
        cert_type: 'Universal',
        flammable_trained: 'yes',
        taps_fitted: 1,
        customer_agrees: 'yes',
        scale_step: this.typed(0.0028, 'mass'),
        rated_amps: 9.4,
      };
      const rest = Object.fromEntries(Object.entries(once).filter(([name]) => name !== 'warranty_end'));
      return { once: { ...rest, ...sound }, sets };
    }
    const sets = Array.from({ length: 1 + Math.floor(this.random() * 8) }, (_, index) =>
      this.set(index, site),
    );
    return { once, sets };
  }

  private put(cells: Cells, key: string, share: number, value: () => number | string): void {
    if (this.random() < share) cells[key] = value();
  }

  private typed(si: number, quantity: Quantity, decimals = this.units.unit(quantity).decimals): number {
    return Number(this.units.value(si, quantity).toFixed(decimals));
  }

  /** What a gauge shows at a saturation temperature, held inside the curve of the gas. */
  private pressure({ refrigerant, fromPa }: Site, degF: number, curve: 'dew' | 'bubble'): number {
    const { lowestTemperatureK, highestTemperatureK } = refrigerant.saturation;
    const kelvin = Math.min(Math.max(fahrenheitK(degF), lowestTemperatureK + 1), highestTemperatureK - 1);
    return this.typed(saturationPressurePa(refrigerant, kelvin, curve) - fromPa, 'pressureDifference');
  }

  /** Readings of a unit that starves, each a little beside the middle of it. */
  private clearlyShort(index: number, site: Site): Cells {
    const k = (degF: number): number => this.typed(fahrenheitK(degF), 'temperature');
    const outdoorF = this.between(75, 100);
    const returnF = this.between(72, 84);
    const wetF = this.between(62, 70);
    const targetF = Math.max(5, (3 * wetF - 80 - outdoorF) / 2);
    const coilF = returnF - 35 - this.between(2, 22);
    const condensingF = outdoorF + this.between(5, 24);
    const pressure = (degF: number, curve: 'dew' | 'bubble'): number => this.pressure(site, degF, curve);
    const cells: Cells = {
      compressor_state: 'running',
      stage: 'as found',
      minutes_since_change: 15 + Math.floor(this.between(0, 20)),
      filter: 'clean',
      evap_coil: 'clean',
      cond_coil: 'clean',
      vents: 'clean',
      fan: 'clean',
      frost: 'none',
      volts_idle: site.ratedV,
      volts_run: site.ratedV,
      outdoor_db: k(outdoorF),
      return_db: k(returnF),
      return_wb: k(wetF),
      supply_db: k(returnF - this.between(3, 14)),
      suction_pressure: pressure(coilF, 'dew'),
      suction_line: k(coilF + targetF + this.between(6, 40)),
      added: index === 0 ? 0 : this.typed(this.between(0, 0.03), 'mass'),
      recovered: 0,
      mass_basis: this.mostly(0.5, 'residual weighed', ['nameplate weighed in', 'unknown']),
      found: this.typed(site.nameplateKg * this.between(0.2, 0.7), 'mass'),
    };
    if (cells['mass_basis'] === 'nameplate weighed in') {
      delete cells['found'];
      cells['added'] = this.typed(site.nameplateKg * this.between(0.1, 0.9), 'mass');
    }
    this.put(cells, 'liquid_pressure', 0.75, () => pressure(condensingF, 'bubble'));
    this.put(cells, 'liquid_line', 0.75, () => k(Math.max(outdoorF - 2, condensingF - this.between(-2, 9))));
    this.put(cells, 'discharge_line', 0.3, () => k(this.between(130, 222)));
    this.put(cells, 'amps_comp', 0.4, () => Number(this.between(5, 9.8).toFixed(1)));
    this.put(cells, 'condenser_air', 0.3, () => k(outdoorF + this.between(3, 30)));
    return cells;
  }

  private set(index: number, site: Site): Cells {
    const { mood, ratedV, nameplateKg } = site;
    const anything = mood === 'anything';
    const rate = (open: number, wild: number): number => (anything ? wild : open);
    const cells: Cells = {};
    const put = (key: string, share: number, value: () => number | string): void => {
      this.put(cells, key, share, value);
    };
    const off = this.random() < (mood === 'opened' ? 0.75 : mood === 'short of gas' ? 0.15 : 0.3);
    put('compressor_state', 0.98, () => (off ? 'off' : this.mostly(0.97, 'running', ['short cycling'])));
    put('stage', 0.9, () =>
      this.pick(['as found', 'after cleaning', 'after step 1', 'after step 12', 'final']),
    );
    put('date_time', 0.8, () => Number((46_236 + this.mostly(0.98, index, [0]) / 24).toFixed(5)));
    put('minutes_since_change', rate(1, 0.95), () =>
      off ? 0 : this.mostly(rate(0.97, 0.8), 15 + Math.floor(this.between(0, 30)), [0, 5, 14, 14.9]),
    );
    for (const part of ['filter', 'evap_coil', 'cond_coil', 'vents', 'fan'])
      put(part, rate(1, 0.98), () =>
        this.mostly(rate(0.998, 0.95), 'clean', ['dirty', 'blocked', 'not seen']),
      );
    put('frost', rate(1, 0.98), () =>
      this.mostly(rate(0.99, 0.9), 'none', ['part', 'inlet only', 'full', 'not seen']),
    );
    put('volts_idle', 0.7, () => Math.round(ratedV * this.between(0.97, 1.04)));
    put('volts_run', rate(0.99, 0.95), () =>
      Math.round(ratedV * this.mostly(rate(0.98, 0.9), this.between(0.95, 1.03), [0.85, 0.9, 1.1, 1.15])),
    );
    put('volts_leg2', 0.1, () => Math.round(ratedV * this.between(0.9, 1.03)));
    put('amps_comp', 0.4, () => Number(this.between(4, 11).toFixed(1)));
    put('amps_total', 0.3, () => Number(this.between(6, 13).toFixed(1)));
    put('watts', 0.3, () => Math.round(this.between(500, 1600)));
    put('cap_label', 0.15, () => 35);
    put('cap_measured', 0.15, () => Number(this.between(31, 38).toFixed(1)));
    const outdoorF = this.between(anything ? 40 : 62, anything ? 118 : 105);
    const returnF = this.between(68, 88);
    const wetF = Math.min(returnF, this.between(56, 72));
    const k = (degF: number): number => this.typed(fahrenheitK(degF), 'temperature');
    put('outdoor_db', rate(0.99, 0.95), () => k(outdoorF));
    if (!off || this.random() < 0.2) {
      put('return_db', rate(0.97, 0.9), () => k(returnF));
      put('return_wb', rate(0.95, 0.85), () => k(wetF));
      put('supply_db', rate(0.97, 0.9), () =>
        k(returnF - this.between(mood === 'short of gas' ? 3 : -1, mood === 'short of gas' ? 14 : 26)),
      );
      put('condenser_air', 0.3, () => k(outdoorF + this.between(5, 40)));
    }
    const low = mood === 'short of gas';
    const coilF = returnF - 35 - (low ? this.between(4, 24) : this.between(-14, 20));
    const targetF = (3 * wetF - 80 - outdoorF) / 2;
    const condensingF = outdoorF + (low ? this.between(6, 26) : this.between(-8, 50));
    const pressure = (degF: number, curve: 'dew' | 'bubble'): number => this.pressure(site, degF, curve);
    if (off) {
      put('standing_off', 0.85, () => this.mostly(0.8, 45, [10, 29.9, 30]));
      put('parts_spread', 0.6, () =>
        this.typed(fahrenheitDifferenceK(this.between(0, 8)), 'temperatureDifference'),
      );
      put('suction_pressure', 0.7, () =>
        pressure(outdoorF + this.mostly(0.6, this.between(-2, 2), [-30, -6, 6, 15, -150]), 'bubble'),
      );
    } else {
      put('suction_pressure', low ? 0.97 : 0.75, () => pressure(coilF, 'dew'));
      put('suction_line', low ? 0.97 : 0.75, () =>
        k(coilF + Math.max(0, targetF) + (low ? this.between(0, 40) : this.between(-20, 40))),
      );
      put('liquid_pressure', 0.6, () => pressure(condensingF, 'bubble'));
      put('liquid_line', 0.6, () =>
        k(Math.max(outdoorF - 4, condensingF - (low ? this.between(-3, 8) : this.between(-8, 30)))),
      );
      put('discharge_line', 0.4, () => k(this.between(120, 235)));
    }
    const opened = mood === 'opened';
    put('mass_basis', 0.85, () =>
      this.pick(
        opened
          ? ['nameplate weighed in', 'residual weighed', 'nameplate weighed in']
          : ['nameplate weighed in', 'residual weighed', 'residual weighed', 'unknown'],
      ),
    );
    put('found', 0.45, () => this.typed(this.between(0, nameplateKg * (low ? 0.7 : 1.1)), 'mass'));
    put('added', rate(0.97, 0.9), () =>
      this.mostly(0.6, 0, [
        this.typed(this.between(0, nameplateKg * 0.2), 'mass'),
        this.typed(this.between(0, nameplateKg), 'mass'),
      ]),
    );
    put('recovered', 0.9, () =>
      this.mostly(opened ? 0.6 : 0.95, 0, [this.typed(this.between(0, nameplateKg), 'mass')]),
    );
    put('hose', 0.7, () => 0);
    put('gas_added', 0.2, () => this.mostly(0.9, site.refrigerant.designation, ['R-22']));
    put('cyl_start', 0.1, () => 12);
    put('cyl_end', 0.1, () => 12);
    put('leak_found', 0.7, () => this.mostly(0.93, 'no', ['yes']));
    put('leak_fixed', 0.1, () => this.pick(['yes', 'no']));
    put('tap_added', 0.5, () => this.mostly(0.93, 0, [1]));
    if (opened || this.random() < 0.05) {
      if (this.random() < 0.4) {
        put('test_gas', 0.9, () => 'nitrogen');
        const startF = this.between(60, 100);
        put('test_start_pressure', 0.97, () =>
          this.typed(
            this.mostly(0.9, 1_000_000, [1_900_000]) + (site.fromPa === 0 ? 101_325 : 0),
            'pressureDifference',
          ),
        );
        put('test_start_temperature', 0.97, () => k(startF));
        put('test_end_pressure', 0.97, () =>
          this.typed(
            this.mostly(0.6, this.between(960_000, 1_040_000), [600_000, 1_200_000]) +
              (site.fromPa === 0 ? 101_325 : 0),
            'pressureDifference',
          ),
        );
        put('test_end_temperature', 0.97, () => k(startF + this.between(-10, 10)));
      }
      if (this.random() < 0.6) {
        put('vacuum_start', 0.95, () => this.typed(this.mostly(0.85, this.between(20, 66), [90]), 'vacuum'));
        put('vacuum_end', 0.95, () =>
          this.typed(this.mostly(0.7, this.between(66, 130), [400, 900, 20]), 'vacuum'),
        );
        put('vacuum_minutes', 0.95, () => this.mostly(0.8, 12, [5, 9.9, 10]));
        put('vacuum_far_end', 0.95, () => this.mostly(0.9, 'yes', ['no']));
      }
    }
    return cells;
  }
}
