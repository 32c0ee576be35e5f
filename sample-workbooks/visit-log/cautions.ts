export interface Caution {
  readonly number: string;
  readonly title: string;
  readonly text: string;
}

/** What every result sheet says, in this order. */
export const cautions: readonly Caution[] = [
  {
    number: '1',
    title: 'Flammable gas first',
    text: 'Read the safety class before anything else. A2L burns mildly, A3 burns. No line tap, no flame and no sparking tool on such a unit; air the room; only a person trained for it opens the circuit.',
  },
  {
    number: '2',
    title: 'Air and ice before charge',
    text: 'A dirty filter, a dirty coil, a slow fan or ice looks like a charge fault. While one of these gates is closed there is no verdict about the charge, and none should be guessed.',
  },
  {
    number: '3',
    title: 'The nameplate is the limit',
    text: 'Everything is weighed, in ounces of weight, never fluid ounces. Nothing goes in beyond the nameplate charge. When nobody weighed what is inside, there is no figure for the room: recover, evacuate, weigh in.',
  },
  {
    number: '4',
    title: 'Every figure has a doubt',
    text: 'A gauge and a probe carry their errors into superheat, split and verdict. A verdict that lies within its own doubt says so. Compare visits only in similar weather.',
  },
  {
    number: '5',
    title: 'Certified technicians only',
    text: 'Only a certified technician may open the circuit. Letting refrigerant go into the air is unlawful, also from a unit with ten ounces in it. Recover it.',
  },
];

/** At the unit: what hurts people or breaks the unit, step by step. */
export const stepCautions: readonly Omit<Caution, 'number'>[] = [
  {
    title: 'Roof',
    text: 'Two points of contact on the ladder. Stay off a wet roof and off any roof in a storm.',
  },
  {
    title: 'Power',
    text: 'Lock the supply out, wait, prove it dead; a generator can start by itself. Discharge the capacitor through a resistor.',
  },
  { title: 'Label', text: 'Without a legible label there is no charging by weight. Say so and stop.' },
  {
    title: 'Standing pressure',
    text: 'It tells which gas is inside, never how much: three ounces and fourteen read the same. All parts must have one temperature.',
  },
  {
    title: 'Line tap',
    text: 'Goggles and gloves. Tap size equals tube size. Never on the discharge line, near heat or on a flammable unit, and never a second one.',
  },
  {
    title: 'Hoses',
    text: 'A five-foot hose full of liquid holds about an ounce. Book what it keeps as a loss of its own, never as charge.',
  },
  {
    title: 'Cylinders',
    text: 'At most 80 % of the volume as liquid: net weight up to 0.8 × water capacity × specific gravity of the gas. One gas to a cylinder, in date, on the scale while filling, never in a closed cab.',
  },
  {
    title: 'Pressure test',
    text: 'Dry nitrogen with regulator and relief, never oxygen or shop air, never above the low-side pressure on the nameplate. Write both temperatures down.',
  },
  {
    title: 'Vacuum',
    text: 'Gauge at the far end, pump valved off for the test. A compressor that runs in vacuum ruins its windings.',
  },
  {
    title: 'Charging',
    text: 'Blends leave the cylinder as liquid and are flashed before the suction. Small steps, then fifteen minutes. Liquid breaks valves.',
  },
];
