import type { DefaultUsed } from '@boothwright/assessment';
import { type BoothSpec, defaults, type Material } from '@boothwright/language';
import { backing, evidenceText, originText } from '../../hover/evidence-text.js';
import { defaultText } from '../../numbers/default-text.js';
import { formatFigures } from '../../numbers/format-number.js';
import { materialFigures } from '../../numbers/material-figures.js';
import { type Block, blocks, heading, list, type ReportSection, table, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';
import { materialsUsed } from './materials-used.js';

const stateable: ReadonlySet<string> = new Set(defaults.map(({ name }) => name));

/** Every value that the text does not give, and every figure of a material, with what it rests on. */
export function assumptionsSection({ result, spec }: ReportInput): ReportSection {
  const unique = new Map<string, DefaultUsed>();
  for (const used of result.defaults) unique.set(`${used.name} ${used.value}`, used);
  const all = [...unique.values()];
  return {
    id: 'assumptions',
    title: 'Assumptions and origins',
    lead: 'What was taken for granted, how strongly it is backed, and where it comes from.',
    blocks: blocks(
      text(
        `Air at ${formatFigures(result.air.temperatureC)} °C and ${formatFigures(result.air.relativeHumidity * 100)} % relative humidity. What is in no table here is given in the text.`,
      ),
      defaultsTable(
        'Assumed where the text is silent: a line of the text takes its place',
        all.filter(({ name }) => stateable.has(name)),
      ),
      defaultsTable(
        'Taken for granted by the models',
        all.filter(({ name }) => !stateable.has(name)),
      ),
      ...materialsBlocks(spec),
      ...boothAssumptions(result.booths),
    ),
  };
}

function defaultsTable(caption: string, used: readonly DefaultUsed[]): Block | undefined {
  return table(
    caption,
    [{ head: 'name' }, { head: 'value' }, { head: 'backed by' }, { head: 'source' }],
    used.map((each) => [each.name, defaultText(each), evidenceText(each.evidence), each.source]),
  );
}

function materialsBlocks(spec: BoothSpec): Block[] {
  return blocks(
    table(
      'Figures of the materials',
      [{ head: 'material' }, { head: 'figures' }, { head: 'origin' }, { head: 'backed by' }, { head: 'source' }],
      materialsUsed(spec).flatMap(materialRows),
    ),
  );
}

/** One row for each origin of a material's figures. */
function materialRows(material: Material): string[][] {
  const figures = [
    ...materialFigures(material).map(({ label, figure, text: figureText }) => ({
      words: `${label} ${figureText}`,
      figure,
    })),
    ...(material.fireClass ? [{ words: `fire class ${material.fireClass.value}`, figure: material.fireClass }] : []),
    ...(material.absorption ? [{ words: 'absorption by band', figure: material.absorption }] : []),
  ];
  const groups = new Map<string, { words: string[]; row: readonly [string, string, string] }>();
  for (const { words, figure } of figures) {
    const { evidence, source } = backing(figure.origin, material.source);
    const row = [originText(figure.origin), evidence, source] as const;
    const key = row.join('\n');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { words: [words], row });
    else group.words.push(words);
  }
  const name = material.title ? `${material.name} “${material.title}”` : material.name;
  return [...groups.values()].map(({ words, row }) => [name, words.join(', '), ...row]);
}

function boothAssumptions(booths: ReportInput['result']['booths']): Block[] {
  const sentences = Object.values(booths).flatMap(({ roomSound, noise, moving, build, air }) => [
    ...(noise.roomTone?.assumptions ?? []),
    ...(roomSound?.assumes ?? []),
    ...(moving?.assembly?.assumes ?? []).map((each) => `order of work: ${each}`),
    ...build.panelNotes,
    ...(air ? [air.supply.note, ...(air.takes ? [air.takes.note] : [])] : []),
  ]);
  const unique = [...new Set(sentences.filter(Boolean))];
  return unique.length === 0 ? [] : blocks(heading('Also assumed'), list(unique));
}
