import type { AllowanceResult } from '@boothwright/assessment';
import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import type { View } from './view.js';

/** Comments that allow a finding or a caution: what each keeps silent, and those that have no effect. */
export function allowanceDiagnostics(view: View): Diagnostic[] {
  const own = view.results?.allowances.filter(({ range }) => range.file === view.file) ?? [];
  return own.map((allowance) => ({
    range: view.lines.rangeOf(allowance.range),
    ...wordsOf(allowance),
    source: 'boothwright',
  }));
}

function wordsOf({ id, state, told, note }: AllowanceResult): Pick<Diagnostic, 'severity' | 'code' | 'message'> {
  return state === 'allowed'
    ? { severity: DiagnosticSeverity.Hint, code: id, message: `Allowed here: ${told.join('; ')}` }
    : { severity: DiagnosticSeverity.Warning, code: 'allow-unused', message: `This comment has no effect: ${note}` };
}
