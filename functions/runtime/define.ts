import type { Figure, Phrase, Verdict } from '../../src/phrase.ts';
import type { Refrigerant } from '../../src/refrigerants/index.ts';
import type { Quantity } from '../../src/units/quantities.ts';
import type { CellInput } from './cells.ts';
import type { Family } from './families.ts';
import type { UnitSystem } from './unit-system.ts';

interface Described {
  /** One or two plain sentences a user sees in the host's help. Units are added from the quantity. */
  readonly description: string;
}

interface MayBeLeftOut {
  /** True: blank or omitted is allowed and `compute` receives undefined. A default makes this unnecessary. */
  readonly optional?: true;
}

export interface NumberParameter extends Described, MayBeLeftOut {
  readonly kind: 'number';
  readonly quantity: Quantity;
  /** Limits in SI, ends included. For gauge pressure: absolute pascal. */
  readonly minimum?: number;
  readonly maximum?: number;
  /** Limit in SI, end excluded. */
  readonly above?: number;
  readonly integer?: true;
  /** SI. */
  readonly default?: number;
}

export interface TextParameter extends Described, MayBeLeftOut {
  readonly kind: 'text';
  readonly default?: string;
}

export interface ChoiceParameter extends Described, MayBeLeftOut {
  readonly kind: 'choice';
  /** Lower case words; what is typed is compared without case, hyphens and double spaces. */
  readonly choices: readonly string[];
  readonly default?: string;
}

/** TRUE, yes, y, 1 or FALSE, no, n, 0. */
export interface YesNoParameter extends Described, MayBeLeftOut {
  readonly kind: 'yesNo';
  readonly default?: boolean;
}

/** A host date, a serial number or text like 2026-11-25; whole days since 1970-01-01 inside. */
export interface DateParameter extends Described, MayBeLeftOut {
  readonly kind: 'date';
}

export interface RefrigerantParameter extends Described, MayBeLeftOut {
  readonly kind: 'refrigerant';
}

export type ScalarParameter =
  NumberParameter | TextParameter | ChoiceParameter | YesNoParameter | DateParameter | RefrigerantParameter;

/** A whole range taken together, in reading order; blank cells become undefined, so that positions keep their meaning. */
export interface ListParameter extends Described, MayBeLeftOut {
  readonly kind: 'list';
  readonly of: ScalarParameter;
}

/** A whole range with its heading row, handed over as it is. */
export interface TableParameter extends Described, MayBeLeftOut {
  readonly kind: 'table';
}

export type Parameter = ScalarParameter | ListParameter | TableParameter;
export type Parameters = Readonly<Record<string, Parameter>>;

type BareValue<P> = P extends { kind: 'number' | 'date' }
  ? number
  : P extends { kind: 'text' }
    ? string
    : P extends { kind: 'choice'; choices: readonly (infer C)[] }
      ? C
      : P extends { kind: 'yesNo' }
        ? boolean
        : P extends { kind: 'refrigerant' }
          ? Refrigerant
          : P extends { kind: 'list'; of: infer E }
            ? readonly (BareValue<E> | undefined)[]
            : P extends { kind: 'table' }
              ? readonly (readonly CellInput[])[]
              : never;

type ArgumentValue<P> = P extends { optional: true } ? BareValue<P> | undefined : BareValue<P>;

/** Argument types of `compute`, inferred from the declared parameters. */
export type Arguments<P extends Parameters> = { readonly [K in keyof P]: ArgumentValue<P[K]> };

export interface Column {
  readonly heading: string;
  readonly kind: 'number' | 'text' | 'date';
  readonly quantity?: Quantity;
}

/** A cell of a computed table: SI number, text, phrase, or undefined for blank. */
export type TableCell = number | string | Phrase | undefined;

export type Returns =
  | { readonly kind: 'number'; readonly quantity: Quantity; readonly description: string }
  | { readonly kind: 'text'; readonly description: string }
  | { readonly kind: 'verdict'; readonly description: string }
  | { readonly kind: 'date'; readonly description: string }
  | { readonly kind: 'yesNo'; readonly description: string }
  /** Text or a figure, depending on what was asked for. */
  | { readonly kind: 'fact'; readonly description: string }
  /** Heading row, then rows; not broadcast. */
  | { readonly kind: 'table'; readonly columns: readonly Column[]; readonly description: string };

type Computed<R extends Returns> = R extends { kind: 'number' | 'date' }
  ? number
  : R extends { kind: 'text' }
    ? string | Phrase
    : R extends { kind: 'verdict' }
      ? Verdict
      : R extends { kind: 'yesNo' }
        ? boolean
        : R extends { kind: 'fact' }
          ? string | Phrase | Figure
          : readonly (readonly TableCell[])[];

export interface Context {
  /** Local atmosphere [Pa] at the call's elevation, standard atmosphere. */
  readonly atmospherePa: number;
  /** In which units plain numbers of the call are read: for tables, which arrive as they are. */
  readonly units: UnitSystem;
}

export interface Example {
  /** As a user types them: numbers in US units unless `units` says otherwise, text may carry units. */
  readonly arguments: Readonly<Record<string, CellInput | readonly (readonly CellInput[])[]>>;
  /**
   * Expected result in the call's units. A verdict is compared by its beginning, a table by its top-left corner,
   * '#N/A', '#NUM!' or '#VALUE!' expects that error.
   */
  readonly gives: number | string | boolean | readonly (readonly (number | string)[])[];
  readonly tolerance?: number;
  /** Where the expected value comes from: a published table, "definition", "common practice, no source", "from memory". */
  readonly source: string;
}

export interface FunctionDeclaration<P extends Parameters = Parameters, R extends Returns = Returns> {
  /** Upper case, letters and digits. Never renamed or reused. */
  readonly id: string;
  readonly family: Family;
  /** One sentence. */
  readonly summary: string;
  /** In calling order. `elevation` is declared where a gauge pressure comes in or goes out; `units` is added by the runtime. */
  readonly parameters: P;
  readonly returns: R;
  /** Equation, standard, paper or practice the result rests on. */
  readonly source: string;
  readonly examples: readonly Example[];
  /** SI in, SI out. Throws CalcError. */
  readonly compute: (args: Arguments<P>, context: Context) => Computed<R>;
}

/** Declares one worksheet function as plain data; everything a host needs is read from it. */
export function defineFunction<const P extends Parameters, const R extends Returns>(
  declaration: FunctionDeclaration<P, R>,
): FunctionDeclaration {
  return declaration as unknown as FunctionDeclaration;
}
