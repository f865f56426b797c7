import type { Finding, RequirementResult, ResultDocument } from '@boothwright/assessment';
import type { Severities } from '@boothwright/language';
import type { Diagnostic } from 'vscode-languageserver';
import { findingDiagnostic, requirementDiagnostic } from '../diagnostics.js';
import { findingsAsSet } from '../severities.js';
import { statementsAt } from '../statements-at.js';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { fixOfFinding } from './fix-edits.js';
import { layerMoves } from './layer-moves.js';

/** What can be tried at a place, before it is known what it brings. */
export interface DesignCandidate {
  readonly candidate: Candidate;
  /** The booth whose figures count; the first one when undefined. */
  readonly booth: string | undefined;
  /** The requirement that is to be met; undefined where any gain counts. */
  readonly requirement?: RequirementResult;
  /** What it is offered for; undefined where the writer only stands on a layer. */
  readonly diagnostic: Diagnostic | undefined;
}

/**
 * For findings and missed requirements at a place, unless the settings leave them out, and for the layer that the cursor
 * is on.
 */
export function designCandidates(
  view: View,
  results: ResultDocument,
  from: number,
  to: number,
  severities: Severities,
): DesignCandidate[] {
  const at = ({ range }: { readonly range: { readonly file: string; readonly from: number; readonly to: number } }) =>
    range.file === view.file && range.from <= to && from <= Math.min(range.to, view.lines.lineEnd(range.from));
  const found = [
    ...results.findings.filter(at).flatMap((finding) => ofFinding(view, finding)),
    ...results.requirements
      .filter((requirement) => requirement.verdict === 'missed' && at(requirement))
      .flatMap((requirement) => ofRequirement(view, results, requirement)),
    ...ofLayer(view, from, to),
  ].flatMap((each) => told(each, severities));
  // The same change comes up for a finding and for what it makes fail.
  const seen = new Set<string>();
  return found.filter(({ candidate }) => {
    const key = JSON.stringify(candidate.changes);
    return !seen.has(key) && seen.add(key);
  });
}

/** With its diagnostic as the settings want it told; nothing for one that they leave out. */
function told(each: DesignCandidate, severities: Severities): DesignCandidate[] {
  if (each.diagnostic === undefined) return [each];
  return findingsAsSet([each.diagnostic], severities).map((diagnostic) => ({ ...each, diagnostic }));
}

function ofFinding(view: View, finding: Finding): DesignCandidate[] {
  const candidate = fixOfFinding(view, finding);
  const diagnostic = findingDiagnostic(view, finding);
  return candidate === undefined ? [] : [{ candidate, booth: undefined, diagnostic }];
}

/** Requirements on which the layers of a wall bear. */
const soundKinds: ReadonlySet<string> = new Set(['room-tone', 'isolation', 'voice-outside', 'rating']);

function ofRequirement(view: View, results: ResultDocument, requirement: RequirementResult): DesignCandidate[] {
  const booth = requirement.booth ?? undefined;
  const diagnostic = requirementDiagnostic(view, requirement);
  const fixes = results.findings.flatMap((finding) => fixOfFinding(view, finding) ?? []);
  const moves = soundKinds.has(requirement.kind)
    ? assembliesOf(view, requirement).flatMap((name) => layerMoves(view, name))
    : [];
  return [...fixes, ...moves].map((candidate) => ({ candidate, booth, diagnostic, requirement }));
}

/** The assemblies whose layers bear on a requirement: that which it names, else those of the booth. */
function assembliesOf(view: View, { booth: name, text }: RequirementResult): readonly string[] {
  const named = / of ([a-z0-9-]+)/.exec(text)?.[1];
  if (named !== undefined && view.checked.spec.assemblies.has(named)) return [named];
  const booths = view.checked.spec.booths.filter((booth) => name === null || booth.name === name);
  return [
    ...new Set(
      booths.flatMap(({ faces, doors, windows }) => [
        ...Object.values(faces).flatMap((face) => face?.assembly.name ?? []),
        ...doors.map(({ leaf }) => leaf.name),
        ...windows.map(({ pane }) => pane.name),
      ]),
    ),
  ];
}

function ofLayer(view: View, from: number, to: number): DesignCandidate[] {
  const outer = statementsAt(view.parsed, from)[0];
  const name = outer?.slots.get('name');
  if (outer?.keyword.word !== 'assembly' || name?.kind !== 'word' || from <= outer.headerTo) return [];
  return layerMoves(view, name.word, { from, to }).map((candidate) => ({
    candidate,
    booth: undefined,
    diagnostic: undefined,
  }));
}
