import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import { longestText, tooLong } from './longest-text.js';

/** The one complaint about a text that is not read; none for a text that is short enough. */
export function tooLongDiagnostic(text: string): Diagnostic[] {
  if (text.length <= longestText) return [];
  const start = { line: 0, character: 0 };
  return [
    {
      range: { start, end: { line: 1, character: 0 } },
      severity: DiagnosticSeverity.Error,
      code: 'text-too-long',
      source: 'boothwright',
      message: tooLong(text),
    },
  ];
}
