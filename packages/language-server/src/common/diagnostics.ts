import type { Caution, Finding, RequirementResult } from '@boothwright/assessment';
import { type Problem, type Severities, type SourceRange, withSeverities } from '@boothwright/language';
import {
  type Diagnostic,
  type DiagnosticRelatedInformation,
  DiagnosticSeverity,
  DiagnosticTag,
} from 'vscode-languageserver';
import { allowanceDiagnostics } from './allowance-diagnostics.js';
import { findingsAsSet } from './severities.js';
import type { View } from './view.js';

const source = 'boothwright';
const severityOfProblem = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  hint: DiagnosticSeverity.Information,
} as const;
const severityOfFinding = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
} as const;

/** What is wrong with the text itself, and what the last assessment found in it. */
export function diagnostics(view: View, severities: Severities = {}): Diagnostic[] {
  return [...textDiagnostics(view, severities), ...findingsAsSet(assessmentDiagnostics(view), severities)];
}

/**
 * Those of the language; a problem in another file stands on the line that uses the file. The settings count only here
 * and not in the check: a warning that someone wants to see as an error leaves the text sound, and its numbers good.
 */
export function textDiagnostics(view: View, severities: Severities): Diagnostic[] {
  const problems = withSeverities(view.checked.problems, severities);
  const own = problems.filter((problem) => problem.range.file === view.file);
  return [...own.map((problem) => problemDiagnostic(view, problem)), ...elsewhere(view, problems)];
}

/** Missed requirements, findings, and cautions that call for a stop; marked when the text has moved on since. */
export function assessmentDiagnostics(view: View): Diagnostic[] {
  const { results } = view;
  if (results === undefined) return [];
  const found = [
    ...results.requirements.map((requirement) => requirementDiagnostic(view, requirement)),
    ...results.findings.map((finding) => findingDiagnostic(view, finding)),
    ...results.cautions.map((caution) => ofCaution(view, caution)),
    ...allowanceDiagnostics(view),
  ].filter((each) => each !== undefined);
  if (!view.stale) return found;
  return found.map((each) => ({ ...each, message: `${each.message}\n(from before the text was broken)` }));
}

export function problemDiagnostic(view: View, problem: Problem): Diagnostic {
  return {
    range: view.lines.rangeOf(problem.range),
    severity: severityOfProblem[problem.severity],
    code: problem.id,
    source,
    message: problem.hint === undefined ? problem.message : `${problem.message}\n${problem.hint}`,
    relatedInformation: related(view, problem.related ?? []),
    ...(problem.tags === undefined ? {} : { tags: [DiagnosticTag.Deprecated] }),
    ...dataOf(problem),
  };
}

/** What a fix needs to know beside the place, handed back by the editor with its question for fixes. */
function dataOf({ instead, lacks }: Problem): Pick<Diagnostic, 'data'> {
  if (instead === undefined && lacks === undefined) return {};
  return { data: { ...(instead === undefined ? {} : { instead }), ...(lacks === undefined ? {} : { lacks }) } };
}

function elsewhere(view: View, problems: readonly Problem[]): Diagnostic[] {
  return view.checked.files.flatMap((other): Diagnostic[] => {
    const first = problems.find((problem) => problem.range.file === other.file && problem.severity !== 'hint');
    const use = view.parsed.tree.statements.find((statement) => statement.keyword.word === 'use');
    if (other.file === view.file || first === undefined || use === undefined) return [];
    const errors = problems.some((each) => each.range.file === other.file && each.severity === 'error');
    return [
      {
        range: view.lines.rangeOf(use),
        severity: errors ? DiagnosticSeverity.Error : DiagnosticSeverity.Warning,
        code: first.id,
        source,
        message: `In ${other.file}: ${first.message}`,
        relatedInformation: related(view, [first]),
      },
    ];
  });
}

export function requirementDiagnostic(view: View, requirement: RequirementResult): Diagnostic | undefined {
  if (requirement.range.file !== view.file || requirement.verdict === 'met') return undefined;
  const missed = requirement.verdict === 'missed';
  return {
    range: view.lines.rangeOf(requirement.range),
    severity: missed ? DiagnosticSeverity.Warning : DiagnosticSeverity.Information,
    code: missed ? 'requirement-missed' : 'requirement-not-assessed',
    source,
    // It names the path that limits it.
    message: requirement.explanation,
  };
}

export function findingDiagnostic(view: View, finding: Finding): Diagnostic | undefined {
  if (finding.range.file !== view.file) return undefined;
  return {
    range: view.lines.rangeOf(headerOf(view, finding.range)),
    severity: severityOfFinding[finding.severity],
    code: finding.id,
    source,
    message: finding.fix === '' ? finding.message : `${finding.message}\n${finding.fix}`,
    relatedInformation: related(view, finding.related),
  };
}

function ofCaution(view: View, caution: Caution): Diagnostic | undefined {
  if (caution.severity !== 'stop' || caution.range.file !== view.file) return undefined;
  const number = caution.number === null ? '' : ` (${caution.number})`;
  return {
    range: view.lines.rangeOf(headerOf(view, caution.range)),
    severity: DiagnosticSeverity.Warning,
    code: caution.id,
    source,
    message: `Stop: ${caution.hazard}${number}\n${caution.why}\n${caution.ask}`,
  };
}

/** A squiggle under a whole block hides the text; what holds for a block is marked on its first line. */
function headerOf(view: View, range: SourceRange): SourceRange {
  const end = view.lines.lineEnd(range.from);
  return range.to <= end ? range : { ...range, to: end };
}

function related(
  view: View,
  places: readonly { readonly range: SourceRange; readonly message: string }[],
): DiagnosticRelatedInformation[] {
  return places.flatMap(({ range, message }) => {
    const location = view.locate(range);
    return location === undefined ? [] : [{ location, message }];
  });
}
