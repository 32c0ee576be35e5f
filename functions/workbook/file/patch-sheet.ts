import type { CellValue } from '../model/values.ts';
import { spellValue } from './cell-value.ts';
import type { CellSpot } from './sheet-part.ts';
import { encodeText } from './xml-reader.ts';

export interface CellPatch {
  readonly spot: CellSpot;
  readonly value: CellValue;
}

/** Text of a worksheet part with some cached values changed and every other character as it was. */
export function patchSheet(text: string, patches: readonly CellPatch[]): string {
  const inOrder = [...patches].sort((one, other) => one.spot.tagStart - other.spot.tagStart);
  const pieces: string[] = [];
  let copied = 0;
  for (const { spot, value } of inOrder) {
    pieces.push(text.slice(copied, spot.tagStart), patchCell(text, spot, value));
    copied = spot.end;
  }
  pieces.push(text.slice(copied));
  return pieces.join('');
}

function patchCell(text: string, spot: CellSpot, value: CellValue): string {
  const tag = text.slice(spot.tagStart, spot.tagEnd);
  const name = /^<([^\s/>]+)/.exec(tag)?.[1] ?? 'c';
  const prefix = name.includes(':') ? name.slice(0, name.indexOf(':') + 1) : '';
  const { type, text: spelled } = spellValue(value);
  const element = `<${prefix}v>${encodeText(spelled)}</${prefix}v>`;
  const openTag = withType(tag, type);
  const body = text.slice(spot.tagEnd, spot.bodyEnd);
  const closeTag = spot.bodyEnd === spot.end ? `</${name}>` : text.slice(spot.bodyEnd, spot.end);
  return openTag + patchBody(body, spot, element) + closeTag;
}

/** The start tag with another cell type, and never closed at once. */
function withType(tag: string, type: string | undefined): string {
  const open = tag.replace(/\s*\/?>$/, '');
  const bare = open.replace(/\s+t\s*=\s*(?:"[^"]*"|'[^']*')/, '');
  return `${bare}${type === undefined ? '' : ` t="${type}"`}>`;
}

function patchBody(body: string, spot: CellSpot, element: string): string {
  const at = (position: number): number => position - spot.tagEnd;
  // Without a value yet it comes behind the formula (CT_Cell: f, v, is, extLst).
  const behindFormula = spot.formulaEnd >= 0 ? at(spot.formulaEnd) : 0;
  const from = spot.valueStart >= 0 ? at(spot.valueStart) : behindFormula;
  const to = spot.valueStart >= 0 ? at(spot.valueEnd) : behindFormula;
  const result = body.slice(0, from) + element + body.slice(to);
  if (spot.inlineStart < 0) return result;
  const shift = result.length - body.length;
  const isBehind = spot.valueStart < 0 || spot.inlineStart > spot.valueStart;
  const inlineFrom = at(spot.inlineStart) + (isBehind ? shift : 0);
  const inlineTo = at(spot.inlineEnd) + (isBehind ? shift : 0);
  return result.slice(0, inlineFrom) + result.slice(inlineTo);
}
