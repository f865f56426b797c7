import type { Assembly, Door, Face, Hole, Slit, Window } from '../model/booth-spec.js';
import type { Sourced, SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { assemblyNamed } from './assembly-names.js';
import { type BlockReader, factOf, nameOf, readBlock, slotOf, titleOf, wordIn } from './block-reader.js';
import { type CheckContext, complain, hearing, rangeIn, wholeOf } from './context.js';
import { reportUnknown } from './names.js';
import { boardHint, readLayer } from './read-layer.js';
import { readSize2 } from './read-size.js';
import { factChoice, factNumber, factNumberOr, type NumberRule } from './read-value.js';

export interface OpeningBase {
  readonly name: string;
  readonly title?: string;
  readonly nameRange: SourceRange;
  readonly range: SourceRange;
  readonly face: Face;
  readonly faceRange: SourceRange;
}

export function openingBase(statement: Statement): OpeningBase | undefined {
  const named = nameOf(statement);
  const face = wordIn(statement, 'face');
  if (!named || !face) return undefined;
  return { ...named, ...titleOf(statement), range: wholeOf(statement), face: face.word as Face, faceRange: face.range };
}

const LENGTH: Omit<NumberRule, 'label' | 'fact' | 'noun'> = { dimension: 'length' };
const SEAL = { ...LENGTH, min: 0, usual: { min: 0, max: 0.03, text: 'seal gaps are narrower than 30 mm' } };

export function readDoor(ctx: CheckContext, statement: Statement, base: OpeningBase): Door | undefined {
  const reader = readBlock(ctx, statement, `door ${base.name}`);
  const size = readSize2(reader, 'size');
  const offset = readOffset(reader);
  const leaf = readSheet(reader, 'leaf');
  const perimeterGap = factNumberOr(reader, 'gap perimeter', 'door-perimeter-gap', { ...SEAL, noun: 'a seal gap' });
  const thresholdGap = factNumberOr(reader, 'gap threshold', 'door-threshold-gap', {
    ...SEAL,
    noun: 'a threshold gap',
  });
  const swing = factChoice<'outward' | 'inward'>(reader, 'swing');
  const lock = factChoice<'none' | 'latch' | 'lock'>(reader, 'lock');
  return size && leaf && { ...base, size, offset, leaf, perimeterGap, thresholdGap, swing, lock };
}

export function readWindow(ctx: CheckContext, statement: Statement, base: OpeningBase): Window | undefined {
  const reader = readBlock(ctx, statement, `window ${base.name}`);
  const size = readSize2(reader, 'size');
  const offset = readOffset(reader);
  const sill = factNumber(reader, 'sill', { ...LENGTH, noun: 'the height of a sill', min: 0 })?.sourced;
  const pane = readSheet(reader, 'pane');
  return size && pane && { ...base, size, offset, sill, pane };
}

function readOffset(reader: BlockReader): Sourced<number> | undefined {
  return factNumber(reader, 'offset', { ...LENGTH, noun: 'an offset', min: 0 })?.sourced;
}

/** A leaf or pane: an assembly by name, or one material with its thickness, which makes an assembly of one layer. */
function readSheet(reader: BlockReader, keyword: 'leaf' | 'pane'): Assembly | undefined {
  const { ctx } = reader;
  const statement = factOf(reader, keyword);
  const name = statement && wordIn(statement, 'what');
  if (!statement || !name) return undefined;
  if (ctx.program.assemblies.has(name.word)) {
    const amount = slotOf(statement, 'amount', 'expression');
    if (amount)
      complain(
        ctx,
        'amount-of-assembly',
        rangeIn(amount.file ?? statement.file, amount),
        `\`${name.word}\` is an assembly and has its own thickness`,
        { hint: 'leave the thickness out' },
      );
    return assemblyNamed(hearing(ctx, statement), name.word, name.range);
  }
  if (!ctx.program.materials.has(name.word)) {
    if (!ctx.broken.has(name.word)) reportUnknown(hearing(ctx, statement), name.word, name.range, 'material');
    return undefined;
  }
  const layer = readLayer(ctx, statement, `${reader.label}: ${keyword}`, { material: 'what', amount: 'amount' });
  if (!layer || layer === 'absent') return undefined;
  if (layer.material.kind !== 'panel' && layer.material.kind !== 'limp') {
    complain(
      ctx,
      'kind-does-not-fit',
      layer.materialRange,
      `a ${keyword} of \`${name.word}\`, a ${layer.material.kind} material, would not stand on its own`,
      { hint: layer.material.kind === 'lumber' ? boardHint(ctx, name.word) : 'use a panel, or an assembly' },
    );
    return undefined;
  }
  return { name: name.word, nameRange: name.range, range: wholeOf(statement), layers: [layer] };
}

const SLIT_LENGTH = { max: 1000, maxText: 'no booth has joints so long' };

export function readSlit(ctx: CheckContext, statement: Statement, base: OpeningBase): Slit | undefined {
  const reader = readBlock(ctx, statement, `slit ${base.name}`);
  const length = factNumber(reader, 'length', {
    ...LENGTH,
    noun: 'the length of a slit',
    aboveZero: true,
    ...SLIT_LENGTH,
  });
  const gap = factNumber(reader, 'gap', {
    ...LENGTH,
    noun: 'the gap of a slit',
    min: 0,
    usual: { min: 0, max: 0.03, text: 'slits are narrower than 30 mm' },
  });
  const depth = factNumber(reader, 'depth', { ...LENGTH, noun: 'the depth of a slit', aboveZero: true });
  return length && gap && depth && { ...base, length: length.sourced, gap: gap.sourced, depth: depth.sourced };
}

export function readHole(ctx: CheckContext, statement: Statement, base: OpeningBase): Hole | undefined {
  const reader = readBlock(ctx, statement, `hole ${base.name}`);
  const diameter = factNumber(reader, 'diameter', { ...LENGTH, noun: 'the diameter of a hole', min: 0 });
  const depth = factNumber(reader, 'depth', { ...LENGTH, noun: 'the depth of a hole', aboveZero: true });
  return diameter && depth && { ...base, diameter: diameter.sourced, depth: depth.sourced };
}
