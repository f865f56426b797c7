import type { Caution, Finding, RequirementResult, ResultDocument, TextRange } from '@boothwright/assessment';
import { CATALOGUE_FILE, type Problem, problemTable } from '@boothwright/language';
import { type LineStarts, lineAndColumn, lineStarts } from '../text/line-and-column.js';
import type { SarifLevel, SarifLocation, SarifLog, SarifResult, SarifRule } from './sarif-log.js';

/** A specification that was worked out, with the files named as the user names them. */
export interface SarifInput {
  readonly problems: readonly Problem[];
  readonly result: ResultDocument;
  /** Text of each file that was read, by its name. */
  readonly texts: ReadonlyMap<string, string>;
  /** The name that the user gives a file of the result. */
  readonly shownAs: (file: string) => string;
}

/** One thing to tell, before it is known where its rule stands in the list. */
interface Told {
  readonly rule: SarifRule;
  readonly result: Omit<SarifResult, 'ruleId' | 'ruleIndex'>;
}

const levelOf = { error: 'error', warning: 'warning', information: 'note', hint: 'note' } as const;
const levelOfCaution = { stop: 'error', caution: 'warning', note: 'note' } as const;

/**
 * Problems of the texts, requirements that are not met, findings and cautions as one SARIF 2.1.0 log, in the order of the
 * specifications. What a comment of the text allows is there as suppressed, with the reason of the comment. A requirement
 * that could not be assessed is `open`: it is neither met nor missed. The same inputs give the same log.
 */
export function renderSarif(inputs: readonly SarifInput[], version?: string): SarifLog {
  const rules = new Map<string, { readonly rule: SarifRule; readonly index: number }>();
  const results: SarifResult[] = [];
  const files = new Set<string>();
  for (const input of inputs) {
    // The shipped catalogue lies in no folder.
    for (const file of input.texts.keys()) if (file !== CATALOGUE_FILE) files.add(file);
    for (const { rule, result } of toldOf(input)) {
      const known = rules.get(rule.id) ?? { rule, index: rules.size };
      rules.set(rule.id, known);
      results.push({ ruleId: rule.id, ruleIndex: known.index, ...result });
    }
  }
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'boothwright',
            ...(version === undefined ? {} : { version }),
            rules: [...rules.values()].map(({ rule }) => rule),
          },
        },
        columnKind: 'utf16CodeUnits',
        artifacts: [...files].map((file) => ({ location: { uri: uriOf(file) } })),
        results,
      },
    ],
  };
}

function toldOf({ problems, result, texts, shownAs }: SarifInput): Told[] {
  const starts = new Map<string, LineStarts>();
  const place = (file: string, from: number, to: number): SarifLocation => {
    const text = texts.get(file) ?? '';
    const known = starts.get(file) ?? lineStarts(text);
    starts.set(file, known);
    const [start, end] = [from, Math.max(from, to)].map((at) => lineAndColumn(text, at, known)) as [
      ReturnType<typeof lineAndColumn>,
      ReturnType<typeof lineAndColumn>,
    ];
    return {
      physicalLocation: {
        artifactLocation: { uri: uriOf(file) },
        region: { startLine: start.line, startColumn: start.column, endLine: end.line, endColumn: end.column },
      },
    };
  };
  const at = ({ file, from, to }: TextRange) => place(shownAs(file), from, to);
  const also = (places: readonly { readonly location: SarifLocation; readonly message: string }[]) =>
    places.length === 0
      ? {}
      : { relatedLocations: places.map(({ location, message }) => ({ ...location, message: { text: message } })) };
  return [
    ...problems.map(
      (problem): Told => ({
        rule: ruleOfProblem(problem),
        result: {
          kind: 'fail',
          level: levelOf[problem.severity],
          message: { text: sentences(problem.message, problem.hint) },
          locations: [place(problem.range.file, problem.range.from, problem.range.to)],
          ...also(
            (problem.related ?? []).map(({ range, message }) => ({
              location: place(range.file, range.from, range.to),
              message,
            })),
          ),
        },
      }),
    ),
    ...result.requirements
      .filter(({ verdict }) => verdict !== 'met')
      .map(
        (requirement): Told => ({
          rule: ruleOfRequirement(requirement),
          result: {
            kind: requirement.verdict === 'missed' ? 'fail' : 'open',
            level: requirement.verdict === 'missed' ? 'error' : 'none',
            message: { text: sentences(`\`${requirement.text}\` is ${wordsOf(requirement)}`, requirement.explanation) },
            locations: [at(requirement.range)],
          },
        }),
      ),
    ...result.findings.map(
      (finding): Told => ({
        rule: ruleOfFinding(finding),
        result: {
          kind: 'fail',
          level: levelOf[finding.severity],
          message: { text: sentences(finding.message, finding.explanation, finding.fix) },
          locations: [at(finding.range)],
          ...also(finding.related.map(({ range, message }) => ({ location: at(range), message }))),
        },
      }),
    ),
    ...result.cautions.map(
      (caution): Told => ({
        rule: ruleOfCaution(caution),
        result: {
          kind: 'fail',
          level: levelOfCaution[caution.severity],
          message: { text: sentences(caution.hazard, caution.number ?? undefined, caution.why, caution.ask) },
          locations: [at(caution.range)],
        },
      }),
    ),
    // What a comment allows stands nowhere else in the result.
    ...result.allowances
      .filter(({ state }) => state === 'allowed')
      .flatMap((allowance) =>
        allowance.told.map(
          (message): Told => ({
            rule: rule(allowance.id, `${allowance.kind ?? 'finding'} that the text allows`, 'See the comment.', 'note'),
            result: {
              kind: 'fail',
              level: 'note',
              message: { text: sentences(message) },
              locations: [at(allowance.range)],
              suppressions: [{ kind: 'inSource', justification: allowance.reason }],
            },
          }),
        ),
      ),
  ];
}

function wordsOf({ verdict, value, unit }: RequirementResult): string {
  const words = verdict === 'missed' ? 'missed' : 'not assessed';
  return value === null
    ? words
    : `${words}: ${round(value.value)} ${unit} (${round(value.low)} to ${round(value.high)})`;
}

const round = (value: number) => (Math.abs(value) < 10 ? value.toFixed(2) : value.toFixed(1));

function ruleOfProblem({ id, severity }: Problem): SarifRule {
  const entry = problemTable[id];
  return rule(id, entry?.means ?? 'A problem of the text.', entry?.remedy ?? '', levelOf[entry?.severity ?? severity]);
}

function ruleOfRequirement({ verdict }: RequirementResult): SarifRule {
  return verdict === 'missed'
    ? rule(
        'requirement-missed',
        'A requirement of the text is missed by the prediction.',
        pageOf('assessment'),
        'error',
      )
    : rule(
        'requirement-not-assessed',
        'A requirement of the text could not be assessed.',
        'What is missing stands in the message.',
        'warning',
      );
}

function ruleOfFinding({ id, severity }: Finding): SarifRule {
  return rule(id, `A finding of the assessment: ${spoken(id)}.`, pageOf(`findings/${id}`), levelOf[severity]);
}

function ruleOfCaution({ id, severity }: Caution): SarifRule {
  return rule(
    id,
    `A hazard that the text gives rise to: ${spoken(id)}.`,
    `${pageOf('cautions')} Local codes and licensed practice decide.`,
    levelOfCaution[severity],
  );
}

const spoken = (id: string) => id.replaceAll('-', ' ');
const pageOf = (page: string) => `See docs/${page}.md.`;

function rule(id: string, short: string, help: string, level: SarifLevel): SarifRule {
  return {
    id,
    shortDescription: { text: short },
    help: { text: help === '' ? short : help },
    defaultConfiguration: { level },
  };
}

/** One after the other, each ended by a full stop. */
function sentences(...parts: readonly (string | undefined)[]): string {
  return parts
    .filter((part) => part !== undefined && part !== '')
    .map((part) => (/[.!?]$/.test(part as string) ? part : `${part}.`))
    .join(' ');
}

/** Relative to where the command was run; a name is no part of an address before its signs are written as such. */
function uriOf(file: string): string {
  return file.split('/').map(encodeURIComponent).join('/');
}
