import { aggregateFunctions } from './aggregates.ts';
import { arrayFunctions } from './arrays.ts';
import { conditionalFunctions } from './conditional.ts';
import { convertFunctions } from './convert.ts';
import { dateFunctions } from './dates.ts';
import { financeFunctions } from './finance.ts';
import { libraryFunctions } from './library.ts';
import { logicFunctions } from './logic.ts';
import { lookupFunctions } from './lookup.ts';
import { mathFunctions } from './mathematics.ts';
import { matrixFunctions } from './matrices.ts';
import { referenceFunctions } from './references.ts';
import { roundingFunctions } from './rounding.ts';
import type { StandardFunction } from './standard-function.ts';
import { subtotalFunctions } from './subtotals.ts';
import { textFunctions } from './text.ts';

/** All standard functions by name; what is written here wins over what a library offers under the same name. */
export const standardFunctions: ReadonlyMap<string, StandardFunction> = new Map(
  [
    libraryFunctions,
    aggregateFunctions,
    arrayFunctions,
    conditionalFunctions,
    convertFunctions,
    dateFunctions,
    financeFunctions,
    logicFunctions,
    lookupFunctions,
    mathFunctions,
    matrixFunctions,
    referenceFunctions,
    roundingFunctions,
    subtotalFunctions,
    textFunctions,
  ].flatMap((table) => Object.entries(table)),
);
