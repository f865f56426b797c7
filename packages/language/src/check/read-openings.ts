import type { Assembly, Door, Face, Hole, Microphone, PolarPattern, Slit, Vent, Window } from '../model/booth-spec.js';
import type { Sourced, SourceRange } from '../model/sourced.js';
import type { Fan } from '../model/vent-parts.js';
import type { Statement } from '../syntax/tree.js';
import { assemblyNamed } from './assembly-names.js';
import { type BlockReader, factOf, nameOf, readBlock, slotOf, titleOf, wordIn } from './block-reader.js';
import { type CheckContext, complain, fallback, headerOf, hearing, rangeIn, wholeOf } from './context.js';
import { reportUnknown } from './names.js';
import { boardHint, readLayer } from './read-layer.js';
import { readSize2 } from './read-site.js';
import { factChoice, factNumber, factNumberOr, type NumberRule, numberIn, readBands } from './read-value.js';

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
  const pane = readSheet(reader, 'pane');
  return size && pane && { ...base, size, offset, pane };
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

export function readVent(ctx: CheckContext, statement: Statement, base: OpeningBase): Vent | undefined {
  const reader = readBlock(ctx, statement, `vent ${base.name}`);
  const duct = readDuct(reader);
  const run = factNumber(reader, 'run', {
    ...LENGTH,
    noun: 'the run of a duct',
    aboveZero: true,
    max: 1000,
    maxText: 'no duct of a booth is so long',
    usual: { min: 0.02, max: 30, text: 'ducts run between 20 mm and 30 m' },
  });
  const lining = readDuctLining(reader);
  const bends = factNumberOr(reader, 'bends', 'vent-bends', {
    dimension: 'count',
    noun: 'the number of bends',
    min: 0,
    whole: true,
    usual: { min: 0, max: 12, text: 'ducts have up to a dozen bends' },
  });
  const loss = factOf(reader, 'insertion-loss');
  const insertionLoss =
    loss &&
    readBands(ctx, loss, 'value', {
      dimension: 'level',
      noun: 'an insertion loss',
      label: `${reader.label}: insertion-loss`,
      fact: 'insertion-loss',
      weightings: ['none'],
      usual: { min: -10, max: 80, text: 'air paths lose -10 to 80 dB' },
    });
  const fan = readFan(reader);
  const word = <T extends string>(name: 'vent-opens-to' | 'duct-wall', fact: string) =>
    fallback<T>(ctx, name, `${reader.label}: ${fact}`, 'text', headerOf(statement));
  return (
    duct &&
    run && {
      ...base,
      duct,
      run: run.sourced,
      lining,
      bends,
      insertionLoss,
      fan,
      chambers: [],
      maze: undefined,
      grille: undefined,
      opensTo: word<'room'>('vent-opens-to', 'opens-to'),
      wall: word<'smooth'>('duct-wall', 'wall'),
    }
  );
}

function readDuct(reader: BlockReader): Vent['duct'] | undefined {
  const statement = factOf(reader, 'duct');
  if (!statement) return undefined;
  const rule: NumberRule = {
    dimension: 'length',
    noun: 'the size of a duct',
    label: `${reader.label}: duct`,
    fact: 'duct',
    aboveZero: true,
    usual: { min: 0.01, max: 1, text: 'ducts are 10 mm to 1 m wide' },
  };
  if (statement.slots.has('diameter')) {
    const diameter = numberIn(reader.ctx, statement, 'diameter', rule);
    return diameter && { kind: 'round', diameter: diameter.sourced };
  }
  const width = numberIn(reader.ctx, statement, 'width', rule);
  const height = numberIn(reader.ctx, statement, 'height', rule);
  return width && height && { kind: 'rectangular', width: width.sourced, height: height.sourced };
}

function readDuctLining(reader: BlockReader): Vent['lining'] {
  const statement = factOf(reader, 'lined');
  const layer = statement && readLayer(reader.ctx, statement, `${reader.label}: lined`);
  if (!layer || layer === 'absent') return undefined;
  if (layer.material.kind === 'porous') return layer;
  complain(
    reader.ctx,
    'kind-does-not-fit',
    layer.materialRange,
    `\`${layer.material.name}\` is a ${layer.material.kind} material; a duct is lined with a porous one`,
  );
  return undefined;
}

function readFan(reader: BlockReader): Fan | undefined {
  const statement = factOf(reader, 'fan');
  if (!statement) return undefined;
  const flow = numberIn(reader.ctx, statement, 'flow', {
    dimension: 'flow',
    noun: 'the flow of a fan',
    label: `${reader.label}: fan`,
    fact: 'fan',
    aboveZero: true,
    usual: { min: 0.0002, max: 0.5, text: 'booth fans move 0.2 to 500 L/s' },
  });
  const soundPower = readBands(reader.ctx, statement, 'power', {
    dimension: 'level',
    noun: 'a sound power level',
    label: `${reader.label}: fan sound power`,
    fact: 'fan',
    weightings: ['none'],
    usual: { min: -10, max: 120, text: 'fans have up to 120 dB' },
  });
  return (
    flow && {
      range: wholeOf(statement),
      direction: undefined,
      flow: flow.sourced,
      soundPower,
      curve: undefined,
      lowSpeed: fallback<number>(reader.ctx, 'fan-low-speed', `${reader.label}: low`, 'share', headerOf(statement)),
      place: undefined,
    }
  );
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

export function readMicrophone(ctx: CheckContext, statement: Statement): Microphone | undefined {
  const reader = readBlock(ctx, statement, 'mic');
  const place = ['x', 'y', 'z'].map((axis) =>
    numberIn(ctx, statement, axis, {
      dimension: 'length',
      noun: 'the place of the microphone',
      label: `mic: ${axis}`,
      fact: 'mic',
    }),
  );
  const [x, y, z] = place;
  const selfNoise = factNumber(reader, 'self-noise', {
    dimension: 'level',
    noun: 'the self-noise of a microphone',
    weightings: ['A'],
    usual: { min: -5, max: 40, text: 'microphones have 3 to 40 dBA' },
  });
  const distance = factNumberOr(reader, 'distance', 'mic-distance', {
    ...LENGTH,
    noun: 'the distance to the mouth',
    aboveZero: true,
    usual: { min: 0.01, max: 2, text: 'voices are recorded from 10 mm to 2 m' },
  });
  const highPass = factNumber(reader, 'high-pass', {
    dimension: 'frequency',
    noun: 'a high-pass filter',
    aboveZero: true,
    usual: { min: 10, max: 400, text: 'voice filters lie between 10 and 400 Hz' },
  });
  if (!x || !y || !z) return undefined;
  return {
    range: wholeOf(statement),
    position: { x: x.sourced, y: y.sourced, z: z.sourced },
    selfNoise: selfNoise && { ...selfNoise.sourced, value: selfNoise.level! },
    distance,
    pattern: fallback<PolarPattern>(ctx, 'mic-pattern', 'mic: pattern', 'text', headerOf(statement)),
    highPass: highPass?.sourced,
  };
}
