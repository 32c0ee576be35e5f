import { cautions } from '../../visit-log/cautions.ts';

/** The cautions in one line, in their order, for the frozen head of the sheet. */
export const cautionLine = cautions.map(({ title }) => title).join('. ');

/** How a unit is written beside a label. */
export function unitSign(symbol: string): string {
  return (
    ({ degF: '°F', degC: '°C', uF: 'µF', m3: 'm³', micron: 'µm Hg', money: '' } as Record<string, string>)[
      symbol
    ] ?? symbol
  );
}
