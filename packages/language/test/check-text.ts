import { type CheckOptions, type CheckResult, checkSpec, type SourceAnswer } from '@boothwright/language';

/** Checks one text, or several files of which the first is the entry. */
export function checkText(files: string | Record<string, string | SourceAnswer>, options?: CheckOptions): CheckResult {
  const all = typeof files === 'string' ? { 'spec.booth': files } : files;
  const entry = Object.keys(all)[0]!;
  const read = (path: string): SourceAnswer => {
    const found = all[path];
    if (found === undefined) return { kind: 'missing' };
    return typeof found === 'string' ? { kind: 'text', text: found } : found;
  };
  return checkSpec(entry, { read }, options);
}

/** Identifiers of the problems, in order. */
export function problemIds(files: Parameters<typeof checkText>[0], options?: CheckOptions): readonly string[] {
  return checkText(files, options).problems.map((problem) => problem.id);
}

/** The text that a problem underlines. */
export function underlined(result: CheckResult, index = 0): string {
  const { range } = result.problems[index]!;
  return result.files.find((file) => file.file === range.file)!.text.slice(range.from, range.to);
}
