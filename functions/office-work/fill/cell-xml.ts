import { encodeText } from '../../workbook/file/xml-reader.ts';
import type { FillValue } from './template-fill.ts';

/** Longest text of a cell in every spreadsheet program. */
const longestText = 32_767;

/** A cell of a worksheet part. Text goes in as text, so that "=1+1" from somebody's file never becomes a formula. */
export function cellXml(address: string, style: string | undefined, value: FillValue): string {
  const open = `<c r="${address}"${style === undefined ? '' : ` s="${style}"`}`;
  if (value === undefined || value === '') return `${open}/>`;
  if (typeof value === 'boolean') return `${open} t="b"><v>${value ? 1 : 0}</v></c>`;
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${address}: ${value} is no value of a cell`);
    return `${open}><v>${value}</v></c>`;
  }
  const text = encodeText(value.slice(0, longestText));
  return `${open} t="inlineStr"><is><t xml:space="preserve">${text}</t></is></c>`;
}

/** A formula that shows one value, or whose result fills an area. The text is XML already. */
export function formulaXml(
  address: string,
  style: string | undefined,
  formula: string,
  area?: string,
): string {
  const kind = area === undefined ? '' : ` t="array" ref="${area}"`;
  return `<c r="${address}"${style === undefined ? '' : ` s="${style}"`}><f${kind}>${formula}</f></c>`;
}
