import { colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import type { PlacedLines } from '../place-of-lines.ts';
import { firstSet, lastSet, setColumns } from '../place-of-lines.ts';
import { cautionLine, unitSign } from './words.ts';

/** Lines of the visit page that go on paper below the customer's half, in their order. */
const technicianLines = [
  'date_time',
  'stage',
  'compressor_state',
  'minutes_since_change',
  'ready',
  'volts_run',
  'amps_comp',
  'outdoor_db',
  'return_db',
  'return_wb',
  'supply_db',
  'split',
  'suction_pressure',
  'suction_line',
  'superheat',
  'target_superheat',
  'liquid_pressure',
  'liquid_line',
  'discharge_line',
  'standing_check',
  'mass_basis',
  'found',
  'added',
  'recovered',
  'leak_found',
] as const;

const last = lastSet;
const heights = { customer: 17, technician: 11.5 } as const;

/** One page a visit: what the customer reads on top, what the technician keeps below. */
export function printPage(placed: PlacedLines): SheetRecipe {
  const cells: CellRecipe[] = [];
  const rows: Record<number, number> = {};
  let row = 1;
  const put = (from: string, to: string | undefined, content: Content | undefined, look: Look): void => {
    cells.push({
      at: `${from}${String(row)}`,
      ...(to === undefined ? {} : { through: `${to}${String(row)}` }),
      content,
      look,
    });
  };
  const next = (height: number): void => {
    rows[row] = height;
    row += 1;
  };
  const once = (key: string): string => `Visit!$C$${String(placed.row(key))}`;
  const shown = (cell: string): string => `IF(${cell}="","–",${cell})`;
  const mass = placed.units.unit('mass');
  const weight = (value: string): string => `FIXED(${value},${String(mass.decimals)})&" ${mass.symbol}"`;
  const working = (key: string): string => {
    const at = String(placed.row(key));
    return `Working!$${firstSet}$${at}:$${lastSet}$${at}`;
  };
  const used = 'Tables!$B$2';
  const atEnd = (key: string): string => `IF(${used}=0,0,SUM(INDEX(${working(key)},1,${used})))`;
  const times = rangeOf(placed, 'date_time');

  const label: Look = { size: 9, bold: true, ink: colours.deep };
  const value: Look = { size: 10, wrap: true };
  const line = (title: string, content: Content | undefined, height: number = heights.customer): void => {
    put('A', 'B', title, label);
    // What is not worked out is written by hand, on paper or here.
    const look: Look = content === undefined ? { ...looks.input, ...value } : value;
    put('C', last, content, { ...look, indent: 1, line: { colour: colours.line, sides: 'bottom' } });
    next(height);
  };

  put('A', last, 'Service visit to a small air conditioner', { ...looks.title, size: 16 });
  next(24);
  line(
    'Unit, visit',
    formula(
      `${shown(once('unit_id'))}&"   ·   "&${shown(once('visit_id'))}&"   ·   technician "&${shown(once('technician_id'))}`,
    ),
  );
  line('Customer, site', formula(`${shown(once('owner'))}&"   ·   "&${shown(once('site'))}`));
  put('A', 'B', 'Day', label);
  put('C', 'D', formula(`IF(COUNT(${times})=0,"",MIN(${times}))`), {
    ...value,
    align: 'left',
    indent: 1,
    format: 'yyyy-mm-dd',
  });
  put(
    'E',
    last,
    formula(
      `"gas "&${shown(once('refrigerant'))}&", nameplate charge "&IF(ISNUMBER(${once('nameplate')}),${weight(once('nameplate'))},"–")`,
    ),
    value,
  );
  next(heights.customer);
  line('What was reported', formula(shown(once('reason'))));
  line('What was wrong', undefined, 26);
  line(
    'What was done',
    formula(
      `"refrigerant added "&${weight(atEnd('s_added_visit'))}&", taken out "&${weight(atEnd('s_recovered_visit'))}&IF(${atEnd('s_leak')}=1,"; a leak is open","")`,
    ),
  );
  line('', undefined, 22);
  line('Where it stands', formula('Visit!$A$1'), 20);
  line('What happens next', undefined, 26);
  line('What it costs', undefined, 22);
  line(
    'Opening the circuit',
    formula(
      `IF(${once('customer_agrees')}="","not asked",IF(${once('customer_agrees')}="yes","the customer agrees","the customer does not agree"))&". Every way in is a new place to leak."`,
    ),
  );
  line('Customer, technician', undefined, 26);
  put('A', last, `${cautionLine}. Local codes come before anything written here.`, {
    size: 7.5,
    ink: colours.careInk,
    fill: colours.careFill,
    wrap: true,
    indent: 1,
  });
  next(13);
  put('A', last, undefined, { line: { colour: colours.deep, sides: 'bottom' } });
  next(8);

  const heading: Look = { ...looks.heading, size: 8 };
  put('A', undefined, 'Technician', { ...heading, align: 'left' });
  put('B', undefined, undefined, heading);
  setColumns.forEach((column, index) => {
    put(column, undefined, index + 1, heading);
  });
  next(13);
  const small: Look = { size: 7.5, align: 'center', line: { colour: colours.faintLine, sides: 'bottom' } };
  const from = (source: string, format?: string): void => {
    for (const column of setColumns) {
      const cell = source.replaceAll('¤', column);
      put(column, undefined, formula(`IF(${cell}="","",${cell})`), {
        ...small,
        wrap: true,
        ...(format === undefined ? {} : { format }),
      });
    }
  };
  put('A', undefined, 'Do next', { ...small, align: 'left', bold: true });
  put('B', undefined, undefined, small);
  from('Visit!¤$5');
  next(30);
  for (const key of technicianLines) {
    const visitLine = placed.visit.find((one) => one.key === key);
    if (visitLine === undefined) throw new Error(`no line ${key} to print`);
    const symbol =
      visitLine.kind === 'set' && visitLine.quantity !== undefined
        ? placed.units.unit(visitLine.quantity).symbol
        : visitLine.kind === 'computed'
          ? (visitLine.unit ?? '')
          : '';
    put('A', undefined, visitLine.label, { ...small, align: 'left' });
    put('B', undefined, unitSign(symbol), { ...small, italic: true });
    const field = visitLine.kind === 'set' ? visitLine.field : undefined;
    from(
      `Visit!¤$${String(placed.row(key))}`,
      field?.kind === 'dateTime'
        ? 'mm-dd hh:mm'
        : visitLine.kind === 'computed' && visitLine.decimals !== undefined
          ? '0.0'
          : undefined,
    );
    next(heights.technician);
  }
  return {
    name: 'Page',
    gridLines: false,
    widths: { A: 20, B: 6, [`${firstSet}:${lastSet}`]: 9.5 },
    heights: rows,
    cells,
    protect: true,
    print: { landscape: false, pagesWide: 1, pagesTall: 1, area: `$A$1:$${last}$${String(row - 1)}` },
  };
}

function rangeOf(placed: PlacedLines, key: string): string {
  const row = String(placed.row(key));
  return `Visit!$${firstSet}$${row}:$${lastSet}$${row}`;
}
