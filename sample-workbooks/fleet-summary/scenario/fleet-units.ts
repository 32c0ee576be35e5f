import { sampleUnits } from '../../visit-log/scenario/units.ts';
import { Dice, rounded } from './random.ts';

export type UnitRow = Readonly<Record<string, string | number>>;

interface Model {
  readonly kind: string;
  readonly refrigerant: string;
  readonly nameplate: number;
  readonly capacity: number;
  readonly efficiency: number;
  readonly rated_volts: string;
  readonly rated_amps: number;
  readonly locked_rotor_amps: number;
  readonly low_side_design: number;
  readonly high_side_design: number;
}

/** Invented models; ratings as such units carry them. */
const models = {
  roof: {
    kind: 'roof',
    refrigerant: 'R-410A',
    nameplate: 15.5,
    capacity: 13_500,
    efficiency: 9,
    rated_volts: '115',
    rated_amps: 10.4,
    locked_rotor_amps: 52,
    low_side_design: 236,
    high_side_design: 450,
  },
  oldRoof: {
    kind: 'roof',
    refrigerant: 'R-22',
    nameplate: 18,
    capacity: 13_500,
    efficiency: 8.6,
    rated_volts: '115',
    rated_amps: 11,
    locked_rotor_amps: 56,
    low_side_design: 150,
    high_side_design: 300,
  },
  wall: {
    kind: 'through-wall',
    refrigerant: 'R-410A',
    nameplate: 20,
    capacity: 9000,
    efficiency: 11.3,
    rated_volts: '208/230',
    rated_amps: 3.6,
    locked_rotor_amps: 18,
    low_side_design: 236,
    high_side_design: 450,
  },
  newWall: {
    kind: 'through-wall',
    refrigerant: 'R-32',
    nameplate: 17,
    capacity: 9200,
    efficiency: 12,
    rated_volts: '208/230',
    rated_amps: 3.4,
    locked_rotor_amps: 17,
    low_side_design: 240,
    high_side_design: 540,
  },
  window: {
    kind: 'window',
    refrigerant: 'R-410A',
    nameplate: 13,
    capacity: 10_000,
    efficiency: 10.8,
    rated_volts: '115',
    rated_amps: 8.2,
    locked_rotor_amps: 40,
    low_side_design: 236,
    high_side_design: 450,
  },
  newWindow: {
    kind: 'window',
    refrigerant: 'R-32',
    nameplate: 11.5,
    capacity: 8000,
    efficiency: 12,
    rated_volts: '115',
    rated_amps: 5.4,
    locked_rotor_amps: 28,
    low_side_design: 240,
    high_side_design: 540,
  },
  portable: {
    kind: 'portable',
    refrigerant: 'R-407C',
    nameplate: 12.5,
    capacity: 10_000,
    efficiency: 9.6,
    rated_volts: '115',
    rated_amps: 8.4,
    locked_rotor_amps: 41,
    low_side_design: 174,
    high_side_design: 400,
  },
} as const satisfies Record<string, Model>;

/** Invented owners with their places: who, where, which model, how many, elevation [ft], first year of installation. */
// prettier-ignore
const sites: readonly (readonly [string, string, keyof typeof models, number, number, number])[] = [
  ['Saltmeadow Loop Campground', 'Pitch', 'roof', 10, 640, 2018],
  ['Lantern Row Motel', 'Room', 'wall', 14, 610, 2020],
  ['Lantern Row Motel', 'Annex', 'newWall', 5, 610, 2025],
  ['Cinder Notch Camp', 'Pitch', 'oldRoof', 6, 8200, 2008],
  ['Quillmoor Workshops', 'Bay', 'window', 8, 590, 2016],
  ['Fennick Lane School', 'Class', 'newWindow', 4, 600, 2024],
  ['Tidewick Market Hall', 'Stall', 'portable', 5, 580, 2017],
];

function build(): readonly UnitRow[] {
  const dice = new Dice(2025);
  const units: UnitRow[] = sampleUnits.map((unit) => ({ ...unit }));
  for (const [owner, place, model, count, elevation, year] of sites) {
    for (let index = 1; index <= count; index += 1) {
      const made = models[model];
      const flammable = made.refrigerant === 'R-32';
      const tapped = !flammable && dice.chance(0.6);
      const installed = year + dice.whole(0, year < 2024 ? 3 : 0);
      units.push({
        ...made,
        unit_id: `U-${String(units.length + 1).padStart(2, '0')}`,
        owner,
        site: `${place} ${index + 10}`,
        nameplate: made.nameplate + rounded(dice.whole(-2, 2) * 0.5, 1),
        nameplate_from: 'label on the unit',
        phase: 1,
        metering: 'capillary',
        charge_method: 'nameplate',
        installed_on: `${installed}-0${dice.whole(3, 7)}-${String(dice.whole(1, 28)).padStart(2, '0')}`,
        months_a_year: dice.whole(5, 8),
        elevation,
        taps_fitted: tapped ? 1 : 0,
        ...(tapped ? { taps_place: 'process tube' } : {}),
        status: 'in use',
      });
    }
  }
  return units;
}

/** The twelve units of the visit log and the rest of the invented fleet. */
export const fleetUnits: readonly UnitRow[] = build();
