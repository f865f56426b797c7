import { type Assessed, type Assessor, compareAssessed, createAssessor } from '@boothwright/assessment';
import { checkSpec } from '@boothwright/language';
import { renderComparisonMarkdown, renderComparisonText } from '@boothwright/presentation';
import { chooseSpec } from './choose-spec.js';
import { type OpenedSide, openSide, openSince, type Side } from './compare/side.js';
import { type Complaint, complaintText } from './complaint.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { guarded } from './guarded.js';
import { grave, problemsText, shownProblems } from './problems-text.js';
import { startProgress } from './progress.js';
import { styleOf, type Terminal } from './terminal.js';
import { toJson } from './to-json.js';

export const comparisonFormats = ['text', 'markdown', 'json'] as const;

export interface CompareCommandOptions {
  readonly format: (typeof comparisonFormats)[number];
  /** Compare the file with itself at this revision. */
  readonly since?: string | undefined;
  readonly variants: readonly string[];
  readonly full?: boolean | undefined;
}

/** `compare`: what changed between two specifications and what that does. */
export function compareCommand(
  old: string,
  now: string | undefined,
  options: CompareCommandOptions,
  terminal: Terminal,
): ExitCode {
  return guarded(now ?? old, terminal, () => {
    const style = styleOf(terminal.stderr, terminal.env);
    const refuse = (complaint: Complaint): ExitCode => {
      terminal.stderr.write(complaintText(complaint, style));
      return exitCode.misuse;
    };
    const asked = askedOf(old, now, options, terminal);
    if ('complaint' in asked) return refuse(asked.complaint);
    const [first, second] = [asked.old.open(), asked.new.open()];
    if ('complaint' in first) return refuse(first.complaint);
    if ('complaint' in second) return refuse(second.complaint);

    const endProgress = startProgress(`Comparing ${second.side.name} …`, terminal.stderr);
    try {
      const assessor = createAssessor();
      const before = worked(first.side, asked.old.variant, assessor);
      if ('complaint' in before) return refuse(before.complaint);
      const after = worked(second.side, asked.new.variant, assessor);
      if ('complaint' in after) return refuse(after.complaint);
      const comparison = compareAssessed(before.assessed, after.assessed);
      endProgress();
      const isOne = first.side.name === second.side.name;
      for (const side of isOne ? [after] : [before, after])
        terminal.stderr.write(problemsText(side.errors, side.texts, style));
      for (const { note } of [first.side, second.side]) if (note !== '') terminal.stderr.write(`note: ${note}\n`);
      terminal.stdout.write(
        options.format === 'json'
          ? `${toJson(comparison)}\n`
          : options.format === 'markdown'
            ? renderComparisonMarkdown(comparison)
            : renderComparisonText(comparison, styleOf(terminal.stdout, terminal.env, options.full ? 'full' : 'short')),
      );
      const isLost = comparison.requirements.some(({ turn }) => turn === 'lost');
      return isLost || before.errors.length + after.errors.length > 0 ? exitCode.missed : exitCode.met;
    } finally {
      endProgress();
    }
  });
}

interface AskedSide {
  readonly open: () => OpenedSide;
  readonly variant: string | undefined;
}

/** Which two sides are meant. */
function askedOf(
  old: string,
  now: string | undefined,
  { since, variants }: CompareCommandOptions,
  around: Terminal,
): { readonly old: AskedSide; readonly new: AskedSide } | { readonly complaint: Complaint } {
  const refuse = (message: string, help: string) => ({ complaint: { id: 'compare-what', place: old, message, help } });
  if (variants.length > 2)
    return refuse(`found ${variants.length} variants, expected at most two`, 'compare them two by two');
  const [one, other = one] = variants;
  const open = (typed: string) => () => openSide(typed, around);
  if (since !== undefined && now !== undefined)
    return refuse('found --since and two files, expected one of them', 'compare --since REVISION FILE');
  if (since !== undefined)
    return {
      old: { open: () => openSince(since, old, around), variant: one },
      new: { open: open(old), variant: other },
    };
  if (now !== undefined) return { old: { open: open(old), variant: one }, new: { open: open(now), variant: other } };
  if (variants.length === 0)
    return refuse(
      'found one specification and nothing to compare it with',
      'name a second file, a revision with --since, or a variant with --variant',
    );
  return variants.length === 1
    ? { old: { open: open(old), variant: undefined }, new: { open: open(old), variant: one } }
    : { old: { open: open(old), variant: one }, new: { open: open(old), variant: other } };
}

function worked(side: Side, variant: string | undefined, assessor: Assessor) {
  const checked = checkSpec(side.entry, side.host);
  const problems = shownProblems(checked, { ...side });
  const texts = new Map(checked.files.map(({ file, text }) => [side.shownAs(file), text]));
  const chosen = chooseSpec(checked.spec, variant, side.name);
  if ('complaint' in chosen) return chosen;
  // Variants that nobody asked for are not worked out.
  const spec = { ...chosen.spec, variants: [] };
  const assessed: Assessed = { name: side.name, variant, spec, result: assessor.assess(spec) };
  return { assessed, errors: problems.filter(grave), texts };
}
