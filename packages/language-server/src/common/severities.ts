import { findingIds } from '@boothwright/assessment';
import { isSeverityLevel, type Severities, type SeverityLevel, severityComplaint } from '@boothwright/language';
import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';

/** Beside the problems of the text. Cautions are not among them: only a comment with a reason takes a hazard back. */
const settable: ReadonlySet<string> = new Set([...findingIds, 'requirement-missed', 'requirement-not-assessed']);

const severityOf = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  hint: DiagnosticSeverity.Information,
} as const;

/** The levels that an editor sent, by identifier; what cannot be followed is left out. */
export function readSeverities(sent: unknown): Severities {
  return Object.fromEntries(
    entriesOf(sent).filter(
      (entry): entry is [string, SeverityLevel] =>
        isSeverityLevel(entry[1]) && severityComplaint(entry[0], entry[1], settable) === undefined,
    ),
  );
}

/** What is wrong with what an editor sent, one sentence for each. */
export function severityComplaints(sent: unknown): string[] {
  if (sent !== undefined && sent !== null && !isRecord(sent)) {
    return ['boothwright.severities: expected an object with a level for each identifier'];
  }
  return entriesOf(sent).flatMap(([id, level]) => {
    const complaint = severityComplaint(id, level, settable);
    return complaint === undefined ? [] : [`boothwright.severities: ${complaint}`];
  });
}

/** Findings and missed requirements as the settings want them told; an error and a comment that allows stay as they are. */
export function findingsAsSet(found: readonly Diagnostic[], severities: Severities): Diagnostic[] {
  return found.flatMap((each) => {
    const code = String(each.code);
    const wanted = settable.has(code) && Object.hasOwn(severities, code) ? severities[code] : undefined;
    const fixed = each.severity === DiagnosticSeverity.Error || each.severity === DiagnosticSeverity.Hint;
    if (wanted === undefined || fixed) return [each];
    return wanted === 'off' ? [] : [{ ...each, severity: severityOf[wanted] }];
  });
}

function entriesOf(sent: unknown): [string, unknown][] {
  return isRecord(sent) ? Object.entries(sent) : [];
}

function isRecord(sent: unknown): sent is Record<string, unknown> {
  return typeof sent === 'object' && sent !== null && !Array.isArray(sent);
}
