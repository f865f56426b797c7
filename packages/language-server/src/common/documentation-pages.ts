import type { ResultDocument } from '@boothwright/assessment';
import type { Diagnostic } from 'vscode-languageserver';

/** Has each diagnostic lead to the page that explains it, below the address of the documentation that an editor told. */
export function withPages(
  found: readonly Diagnostic[],
  results: ResultDocument | undefined,
  documentation: string | undefined,
): Diagnostic[] {
  if (documentation === undefined) return [...found];
  const base = documentation.endsWith('/') ? documentation : `${documentation}/`;
  return found.map((each) => {
    const page = pageOf(String(each.code), results);
    return page === undefined ? each : { ...each, codeDescription: { href: `${base}${page}` } };
  });
}

function pageOf(code: string, results: ResultDocument | undefined): string | undefined {
  if (code === 'requirement-missed' || code === 'requirement-not-assessed') return 'assessment.md';
  if (code === 'text-too-long') return undefined;
  if (results?.findings.some(({ id }) => id === code)) return `findings/${code}.md`;
  if (results?.cautions.some(({ id }) => id === code)) return 'cautions.md';
  return `problems/${code}.md`;
}
