import type { AllowedProblem } from '../model/allowance.js';
import type { BoothSpec } from '../model/booth-spec.js';
import type { Problem } from '../model/problem.js';
import type { Sourced } from '../model/sourced.js';
import type { Severities } from '../problems/with-severities.js';
import type { SymbolTable } from '../symbols/symbol-table.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import type { DimensionName } from '../units/dimension.js';

/** One value of the checked spec with what it is, for hovers. */
export interface ValueEntry {
  /** E.g. `door entry: gap threshold`. */
  readonly label: string;
  /** Keyword of the fact or name of the default it belongs to. */
  readonly fact: string;
  readonly dimension: DimensionName | 'text';
  readonly value: Sourced<unknown>;
}

export interface CheckResult {
  /** Always there: whatever could be understood. */
  readonly spec: BoothSpec;
  /** Those of every file, in order of file and place. */
  readonly problems: readonly Problem[];
  /** Those that a comment in the text allows, with its reason; they are not among the problems. */
  readonly allowed: readonly AllowedProblem[];
  /** The entry first, then what it uses; the catalogue too when it is used. */
  readonly files: readonly ParsedFile[];
  readonly symbols: SymbolTable;
  /** Every value of the base spec, given or assumed. */
  readonly values: readonly ValueEntry[];
}

export interface CheckOptions {
  /** Most variants that are worked out; the default stands in `limits.ts`. */
  readonly maxVariants?: number;
  /** How warnings and hints are told, by identifier; errors stay errors. */
  readonly severities?: Severities;
  /** Files of an earlier check: what has not changed in them since is not read again. The result is the same without. */
  readonly before?: readonly ParsedFile[];
}
