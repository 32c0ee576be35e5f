import { spell as spellForLibreOffice } from '../../functions/hosts/libreoffice/spell.ts';
import { spellInFile as spellForExcel } from '../../functions/hosts/office/spell.ts';

/** The program a workbook file is written for; each spells the calls of our functions its own way inside the file. */
export type Target = 'excel' | 'others';

export const targets: readonly Target[] = ['others', 'excel'];

const spellings: Readonly<Record<Target, (id: string) => string>> = {
  excel: spellForExcel,
  others: spellForLibreOffice,
};

const neutralCall = /\bOUNCE\.([A-Z][A-Z0-9]*)\(/g;

/** "visit-log.xlsx" for LibreOffice and other programs, "visit-log-excel.xlsx" for Excel. */
export function fileName(base: string, target: Target): string {
  return target === 'excel' ? `${base}-excel.xlsx` : `${base}.xlsx`;
}

/** Respells the neutral `OUNCE.NAME(` of a recipe. */
export function spellFormula(formula: string, target: Target): string {
  return formula.replace(neutralCall, (_call, id: string) => `${spellings[target](id)}(`);
}

/** Ids of our functions that a recipe's formula calls. */
export function calledFunctions(formula: string): string[] {
  return [...formula.matchAll(neutralCall)].map((match) => match[1] ?? '');
}
