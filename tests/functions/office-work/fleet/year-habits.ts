/** A set of readings as a technician wrote it down. */
export interface WrittenSet {
  readonly unit: string;
  /** As the technician wrote it. */
  readonly unitWritten: string;
  readonly visit: string;
  readonly set: number;
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly minute: number;
  readonly technician: string;
  readonly addedTenths: number;
  readonly cylinder: string;
  /** Hundredths of a pound. */
  readonly before: number;
  readonly after: number;
  readonly note: string;
}

export interface Habit {
  readonly technician: string;
  readonly headings: readonly string[];
  readonly separator: string;
  readonly row: (set: WrittenSet) => readonly string[];
  readonly unit?: (unit: string) => string;
  readonly total?: boolean;
  readonly encode?: (text: string) => Uint8Array;
}

export const two = (figure: number): string => String(figure).padStart(2, '0');
export const ounces = (tenths: number): string => (tenths / 10).toFixed(1);
const pounds = (hundredths: number): string => (hundredths / 100).toFixed(2);
const clock = (minute: number): string => `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
const halfDay = (minute: number): string => {
  const hour = Math.floor(minute / 60);
  return `${hour % 12 === 0 ? 12 : hour % 12}:${two(minute % 60)} ${hour < 12 ? 'AM' : 'PM'}`;
};
const gramText = (tenths: number): string => ((tenths / 10) * 28.349523125).toFixed(2);
const kiloText = (hundredths: number): string => ((hundredths / 100) * 0.45359237).toFixed(4);
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
export const utf8 = new TextEncoder();

function utf16(text: string): Uint8Array {
  const bytes = new Uint8Array(2 + 2 * text.length);
  bytes.set([0xff, 0xfe]);
  for (let index = 0; index < text.length; index += 1) {
    bytes[2 + 2 * index] = text.charCodeAt(index) & 0xff;
    bytes[3 + 2 * index] = text.charCodeAt(index) >> 8;
  }
  return bytes;
}

/** Six people, each with a way of writing of his own. */
export const habits: readonly Habit[] = [
  {
    technician: 'Ann',
    headings: [
      'Unit',
      'Visit',
      'Set',
      'Date and time',
      'Technician',
      'Gas in unit',
      'Added (oz)',
      'Why added',
      'Cylinder',
      'Cylinder before (lb)',
      'Cylinder after (lb)',
      'Note',
    ],
    separator: ',',
    row: (s) => [
      s.unitWritten,
      s.visit,
      String(s.set),
      `${s.year}-${two(s.month)}-${two(s.day)} ${clock(s.minute)}`,
      s.technician,
      'R-410A',
      ounces(s.addedTenths),
      s.addedTenths > 0 ? 'leak' : '',
      s.cylinder,
      pounds(s.before),
      pounds(s.after),
      s.note,
    ],
  },
  {
    technician: 'Bob',
    headings: [
      'Tech',
      'Job',
      'Set',
      'Date',
      'Unit',
      'oz added',
      'Bottle',
      'Bottle before lb',
      'Bottle after lb',
      'Remarks',
      'Truck',
    ],
    separator: ',',
    row: (s) => [
      s.technician,
      s.visit,
      String(s.set),
      `${s.month}/${s.day}/${s.year} ${halfDay(s.minute)}`,
      s.unitWritten,
      ounces(s.addedTenths),
      s.cylinder,
      pounds(s.before),
      pounds(s.after),
      s.note,
      '7',
    ],
    unit: (unit) => unit.replace('-', ''),
  },
  {
    technician: 'Cleo',
    headings: [
      'Date and time',
      'Visit',
      'Set',
      'Unit',
      'Technician',
      'Added [g]',
      'Cylinder',
      'Cylinder before [kg]',
      'Cylinder after [kg]',
      'Comments',
    ],
    separator: ';',
    row: (s) => [
      `${two(s.day)}.${two(s.month)}.${s.year} ${clock(s.minute)}`,
      s.visit,
      String(s.set),
      s.unitWritten,
      s.technician,
      gramText(s.addedTenths).replace('.', ','),
      s.cylinder,
      kiloText(s.before).replace('.', ','),
      kiloText(s.after).replace('.', ','),
      s.note,
    ],
  },
  {
    technician: 'Dan',
    headings: [
      'Unit no',
      'Visit',
      'Set',
      'Date',
      'Technician',
      'Added',
      'Cylinder',
      'Tank start',
      'Tank end',
      'Notes',
    ],
    separator: '\t',
    row: (s) => [
      s.unitWritten.toLowerCase(),
      s.visit,
      String(s.set),
      `${s.month}/${s.day}/${two(s.year % 100)}`,
      s.technician,
      `${ounces(s.addedTenths)} oz`,
      s.cylinder,
      `${pounds(s.before)} lb`,
      `${pounds(s.after)} lb`,
      s.note,
    ],
    encode: utf16,
  },
  {
    technician: 'Eve',
    headings: [
      'Added oz',
      'Unit',
      'Visit',
      'Set',
      'When',
      'Technician',
      'Cylinder',
      'Cylinder start',
      'Cylinder end',
    ],
    separator: ',',
    row: (s) => [
      ounces(s.addedTenths),
      `${s.unitWritten} `,
      s.visit,
      String(s.set),
      `${s.day} ${months[s.month - 1] ?? ''} ${s.year} ${clock(s.minute)}`,
      s.technician,
      s.cylinder,
      pounds(s.before),
      pounds(s.after),
    ],
    total: true,
  },
  {
    technician: 'Finn',
    headings: [
      'Unit',
      'Visit',
      'Set',
      'Date',
      'Technician',
      'Charged oz',
      'Cylinder',
      'Bottle start lb',
      'Bottle end lb',
    ],
    separator: ',',
    row: (s) => [
      s.unitWritten,
      s.visit,
      String(s.set),
      `${two(s.day)}/${two(s.month)}/${s.year}`,
      s.technician,
      ounces(s.addedTenths),
      s.cylinder,
      pounds(s.before),
      pounds(s.after),
    ],
  },
];
