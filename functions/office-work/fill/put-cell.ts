import { cellXml } from './cell-xml.ts';
import type { FillValue } from './template-fill.ts';

/** Another value for a cell of the template; its look stays. */
export function putCell(sheetXml: string, address: string, value: FillValue): string {
  const style = new RegExp(`<c r="${address}"[^>]*?\\bs="(\\d+)"`).exec(sheetXml)?.[1];
  return replaceCell(sheetXml, address, cellXml(address, style, value));
}

export function replaceCell(sheetXml: string, address: string, cell: string): string {
  const pattern = new RegExp(`<c r="${address}"[^>]*?(?:/>|>.*?</c>)`, 's');
  if (!pattern.test(sheetXml)) throw new Error(`the template has no cell ${address}`);
  return sheetXml.replace(pattern, () => cell);
}
