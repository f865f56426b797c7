import { assemblyBlock, assemblyFact, frameBlock, liningBlock } from './assembly-facts.js';
import { boothBlock, boothFact } from './booth-facts.js';
import { equipmentBlock, panelsBlock } from './inside-facts.js';
import { materialBlock } from './material-facts.js';
import { measuredBlock, measuredFact } from './measured-facts.js';
import { doorBlock, holeBlock, micBlock, slitBlock, windowBlock } from './opening-facts.js';
import { either, literal, newName, text, title } from './parts.js';
import { requirementFacts } from './requirement-facts.js';
import { budgetBlock, budgetFact, sessionBlock, sessionFact } from './session-facts.js';
import type { Block, BlockName, Fact } from './shape.js';
import { siteBlock, siteFact } from './site-facts.js';
import { neighbourBlock, noiseBlock, obstacleBlock, passageBlock } from './surroundings-facts.js';
import { fanBlock, ventBlock } from './vent-facts.js';

const materialFact: Fact = {
  keyword: 'material',
  parts: [newName('material'), title],
  block: { name: 'material', required: true },
  declares: 'material',
  repeats: true,
  example: 'material batt "reclaimed wool batt" { kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 }',
  documentation: 'A material of your own, beside or instead of those of the catalogue.',
};

const useFact: Fact = {
  keyword: 'use',
  parts: [either([literal('catalog')], [text('path')])],
  repeats: true,
  example: 'use "./my-materials.booth"',
  documentation: 'Brings in the names of the catalogue, `use catalog`, or of another file below the workspace folder.',
};

const letFact: Fact = {
  keyword: 'let',
  parts: [newName('let'), literal('='), { kind: 'any-value', slot: 'value' }],
  declares: 'let',
  repeats: true,
  example: 'let gap = 6 mm',
  documentation: 'A named value, to be used wherever a value of its sort is expected.',
};

export const overrideFact: Fact = {
  keyword: '',
  parts: [{ kind: 'path', slot: 'path' }, literal('='), { kind: 'tokens', slot: 'value' }],
  repeats: true,
  example: 'alcove.entry.gap.threshold = 0.3 mm',
  documentation:
    'Changes one fact in this variant: a named value, or a path of booth, opening and fact, of assembly and layer, or of material and fact.',
};

const variantFact: Fact = {
  keyword: 'variant',
  parts: [newName('variant'), title],
  block: { name: 'variant', required: true },
  declares: 'variant',
  repeats: true,
  example: 'variant wide-gap { gap = 50 mm }',
  documentation: 'The same booth with some things changed, worked out beside the base.',
};

const fileBlock: Block = {
  name: 'file',
  documentation: 'What stands outside every block.',
  facts: [
    useFact,
    letFact,
    materialFact,
    assemblyFact,
    siteFact,
    boothFact,
    sessionFact,
    budgetFact,
    ...requirementFacts,
    variantFact,
    measuredFact,
  ],
};

const variantBlock: Block = {
  name: 'variant',
  documentation: 'What is different: values, facts, or whole declarations that replace those of the same name.',
  facts: [materialFact, assemblyFact, siteFact, boothFact, sessionFact, budgetFact, overrideFact],
};

/** Every block and fact of the language. The parser, the checker's wording, completion, hover and the reference read it. */
export const vocabulary: readonly Block[] = [
  fileBlock,
  materialBlock,
  assemblyBlock,
  frameBlock,
  siteBlock,
  noiseBlock,
  passageBlock,
  obstacleBlock,
  neighbourBlock,
  boothBlock,
  liningBlock,
  doorBlock,
  windowBlock,
  ventBlock,
  fanBlock,
  slitBlock,
  holeBlock,
  micBlock,
  equipmentBlock,
  panelsBlock,
  sessionBlock,
  budgetBlock,
  variantBlock,
  measuredBlock,
];

const byName = new Map(vocabulary.map((block) => [block.name, block]));

export function blockOf(name: BlockName): Block {
  return byName.get(name)!;
}
