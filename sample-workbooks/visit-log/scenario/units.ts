/** A row of the unit register: field names of the record, US units. */
export type SampleUnit = Readonly<Record<string, string | number>> & {
  readonly unit_id: string;
  readonly refrigerant: string;
};

const order = [
  'unit_id',
  'owner',
  'site',
  'kind',
  'refrigerant',
  'nameplate',
  'capacity',
  'efficiency',
  'rated_volts',
  'rated_amps',
  'locked_rotor_amps',
  'low_side_design',
  'high_side_design',
  'installed_on',
  'months_a_year',
  'elevation',
  'taps_fitted',
] as const;

const camp = 'Saltmeadow Loop Campground';
const notch = 'Cinder Notch Camp';
const motel = 'Lantern Row Motel';

/** Twelve invented units, in the order of the fields above. */
// prettier-ignore
const rows: readonly (readonly (string | number)[])[] = [
  ['U-01', camp, 'Pitch 7', 'roof', 'R-410A', 14, 11_000, 9.2, '115', 9.4, 46, 236, 450, '2019-05-02', 6, 640, 0],
  ['U-02', camp, 'Pitch 22', 'roof', 'R-410A', 17.5, 13_500, 9, '115', 10.4, 52, 236, 450, '2021-04-20', 6, 640, 1],
  ['U-03', camp, 'Office', 'window', 'R-32', 11.5, 8000, 12, '115', 5.4, 28, 240, 540, '2024-06-11', 5, 640, 1],
  ['U-04', notch, 'Pitch 3', 'roof', 'R-410A', 16, 13_500, 9, '115', 10.4, 52, 236, 450, '2018-05-30', 5, 8200, 1],
  ['U-05', notch, 'Warden hut', 'window', 'R-22', 21, 10_000, 9.4, '115', 9, 48, 150, 300, '2007-06-18', 4, 8200, 1],
  ['U-06', motel, 'Room 4', 'through-wall', 'R-410A', 20, 9000, 11.3, '208/230', 3.6, 18, 236, 450, '2020-03-09', 8, 610, 1],
  ['U-07', motel, 'Room 9', 'through-wall', 'R-410A', 20, 9000, 11.3, '208/230', 3.6, 18, 236, 450, '2020-03-09', 8, 610, 1],
  ['U-08', motel, 'Laundry', 'portable', 'R-290', 8.8, 9000, 10.4, '115', 7.4, 33, 200, 350, '2025-05-14', 6, 610, 0],
  ['U-09', 'Weir Lane Yarn Shop', 'Sales room', 'portable', 'R-407C', 12.7, 10_000, 9.6, '115', 8.4, 41, 174, 400, '2016-07-05', 5, 590, 1],
  ['U-10', camp, 'Ferry kiosk', 'roof', 'R-134a', 15, 7000, 9.1, '115', 6.4, 30, 150, 250, '2017-06-21', 6, 640, 1],
  ['U-11', 'Hollin Reach Library Van', 'Reading cabin', 'window', 'R-32', 12, 8000, 12.1, '115', 5.4, 28, 240, 540, '2025-04-02', 6, 590, 0],
  ['U-12', 'Orchard End Farm', 'Packing room', 'window', 'R-22', 19, 12_000, 9.5, '115', 10.4, 55, 150, 300, '2005-05-27', 5, 590, 1],
];

export const sampleUnits: readonly SampleUnit[] = rows.map((row) => {
  const unit: Record<string, string | number> = Object.fromEntries(
    order.map((name, index) => [name, row[index] ?? '']),
  );
  return {
    ...unit,
    nameplate_from: 'label on the unit',
    phase: 1,
    metering: 'capillary',
    charge_method: 'nameplate',
    status: 'in use',
    ...(row[16] === 0 ? {} : { taps_place: 'process tube' }),
  } as unknown as SampleUnit;
});
