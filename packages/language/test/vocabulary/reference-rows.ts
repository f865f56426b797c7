import { type Block, type DefaultEntry, type Fact, shapeText, type UnitEntry } from '@boothwright/language';

/** A table row of the language reference, from the vocabulary itself. */
export function factRow(fact: Fact): string {
  const notes = [
    ...(fact.required ? ['Required.'] : []),
    ...(fact.repeats && fact.keyword !== '' ? ['May be repeated.'] : []),
    ...(fact.default ? [`Default: \`${fact.default}\`.`] : []),
  ];
  return `| \`${cell(shapeText(fact))}\` | ${cell([fact.documentation, ...notes].join(' '))} | \`${cell(fact.example)}\` |`;
}

export function blockTable(block: Block): string {
  return ['| Line | Meaning | Example |', '| --- | --- | --- |', ...block.facts.map(factRow)].join('\n');
}

export function unitRow(entry: UnitEntry): string {
  return `| \`${entry.unit}\` | ${entry.dimension} | ${cell(entry.documentation)} |`;
}

export function defaultRow(entry: DefaultEntry): string {
  return `| \`${entry.name}\` | ${entry.text} | ${entry.evidence} | ${cell(entry.source)} |`;
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
