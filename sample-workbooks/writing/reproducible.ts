import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

import type { NativeTable } from './recipe.ts';

const fixedTime = new Date(1980, 0, 1);
const contentTypes = '[Content_Types].xml';

/** The writer states "A1" as the extent of every sheet; a wrong extent is worse than none. */
function dropWrongExtent(xml: string): string {
  return xml.replace('<dimension ref="A1"></dimension>', '');
}

/** The writer declares the horizontal values of a curve as text; they are numbers. */
function numericAcross(xml: string): string {
  return xml.replace(/<xVal><strRef>(<f>[^<]*<\/f>)<\/strRef><\/xVal>/g, '<xVal><numRef>$1</numRef></xVal>');
}

/** The title of the upright axis reads upwards; laid flat it takes the width of the plot. */
function turnUprightTitle(xml: string): string {
  return xml.replace(/<valAx>(?:(?!<\/valAx>)[\s\S])*?<\/valAx>/g, (axis) =>
    axis.includes('<axPos val="l">')
      ? axis.replace(/(<title>[\s\S]*?<a:bodyPr [^>]*)rot="0"/, '$1rot="-5400000" vert="horz"')
      : axis,
  );
}

/** Parts and relationships in one order, whatever order the writer's maps had. */
function sortEntries(xml: string): string {
  return xml.replace(
    /(<(?:Types|Relationships)[^>]*>)([\s\S]*)(<\/(?:Types|Relationships)>)/,
    (_all, open: string, inside: string, close: string) => {
      const entries = inside.match(/<(Default|Override|Relationship) [^>]*?(?:\/>|><\/\1>)/g) ?? [];
      return open + entries.sort().join('') + close;
    },
  );
}

/**
 * LibreOffice keeps the cached values only of files whose writer it knows; under any other name it recalculates on load
 * and shows errors where the functions are not installed.
 */
function nameKnownWriter(xml: string): string {
  return xml.replace(/<Application>[^<]*<\/Application>/, '<Application>Microsoft Excel</Application>');
}

const escape = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

/** Declares the formula of each computed column, so that a row added at the end of the table is filled by the host. */
function fillColumns(xml: string, tables: readonly NativeTable[]): string {
  const name = /displayName="([^"]+)"/.exec(xml)?.[1];
  const table = tables.find((candidate) => candidate.name === name);
  if (table === undefined) return xml;
  return table.columns.reduce((text, column) => {
    if (column.fill === undefined) return text;
    const entry = new RegExp(
      `(<tableColumn id="\\d+" name="${escapePattern(escape(column.heading))}")(?:></tableColumn>|/>)`,
    );
    return text.replace(
      entry,
      (_all, open: string) =>
        `${open}><calculatedColumnFormula>${escape(column.fill ?? '')}</calculatedColumnFormula></tableColumn>`,
    );
  }, xml);
}

function escapePattern(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** Same recipe, same bytes: entries sorted, times fixed, and the writer's known slips put right. */
export function reproducible(file: Uint8Array, tables: readonly NativeTable[]): Uint8Array {
  const parts = unzipSync(file);
  const names = Object.keys(parts).sort((a, b) => {
    if (a === contentTypes || b === contentTypes) return a === contentTypes ? -1 : 1;
    return a < b ? -1 : 1;
  });
  const out: Record<string, [Uint8Array, { mtime: Date; level: 9 }]> = {};
  for (const name of names) {
    let data = parts[name] ?? new Uint8Array();
    const edit = (change: (xml: string) => string): void => {
      data = strToU8(change(strFromU8(data)));
    };
    if (/^xl\/worksheets\/sheet\d+\.xml$/.test(name)) edit(dropWrongExtent);
    if (/^xl\/charts\/chart\d+\.xml$/.test(name)) edit((xml) => turnUprightTitle(numericAcross(xml)));
    if (/^xl\/tables\/table\d+\.xml$/.test(name)) edit((xml) => fillColumns(xml, tables));
    if (name === contentTypes || name.endsWith('.rels')) edit(sortEntries);
    if (name === 'docProps/app.xml') edit(nameKnownWriter);
    out[name] = [data, { mtime: fixedTime, level: 9 }];
  }
  return zipSync(out);
}
