import { defaultOf } from '../defaults.js';
import { limits } from '../limits.js';
import type { AirLayer, Assembly, AssemblyLayer, FrameLayer, Material, MaterialLayer } from '../model/booth-spec.js';
import type { Sourced, SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { NOMINAL_LUMBER } from '../vocabulary/words.js';
import { type BlockReader, factOf, nameOf, readBlock, slotOf, titleOf, wordIn } from './block-reader.js';
import { type CheckContext, complain, headerOf, hearing, keep, slotRange, textOf, warn, wholeOf } from './context.js';
import { hollowLumber, screwsOf } from './hollow-studs.js';
import { declaredMaterial, materialNamed } from './names.js';
import { readFixings, reportLooseFixings } from './read-fixings.js';
import { boardHint, readLayer } from './read-layer.js';
import { numberIn } from './read-value.js';

/** m, from centre to centre: a board of common width has a stud along each edge. Common practice, no source. */
const WIDEST_SPACING = 1.2;

/** The material of studs that no line names. */
export const DEFAULT_LUMBER = defaultOf('stud-lumber').value as string;

/** Finds the assembly that stands for its layers in another one. */
export type FindAssembly = (ctx: CheckContext, name: string, range: SourceRange) => Assembly | undefined;

export function readAssembly(ctx: CheckContext, statement: Statement, find: FindAssembly): Assembly | undefined {
  const named = nameOf(statement);
  if (!named) return undefined;
  const label = `assembly ${named.name}`;
  const layers = readLayers(ctx, statement, label, find);
  if (layers.length === 0 && statement.complete && statement.block?.closed && statement.block.statements.length === 0) {
    complain(ctx, 'no-layers', headerOf(statement), `${label} has no layers`, {
      hint: 'list its layers from outside to inside, each like `gypsum-board 12.5 mm`',
    });
  }
  return { ...named, ...titleOf(statement), range: wholeOf(statement), layers };
}

/** Layers of an assembly or a lining; broken ones are left out, those of no thickness too. */
export function readLayers(
  ctx: CheckContext,
  header: Statement,
  label: string,
  find?: FindAssembly,
): readonly AssemblyLayer[] {
  const layers: AssemblyLayer[] = [];
  const statementOf = new Map<AssemblyLayer, Statement>();
  let whole = header.complete && header.block !== undefined;
  for (const statement of header.block?.statements ?? []) {
    const inner = find && innerAssembly(ctx, statement, find);
    if (inner) {
      const { layers: added } = inner;
      if (!added || !statement.complete || isPartial(added)) whole = false;
      for (const layer of added ?? []) {
        layers.push(layer);
        statementOf.set(layer, statement);
      }
    } else {
      const layer = statement.fact && readOne(ctx, statement, label);
      if (!layer || !statement.complete) whole = false;
      if (layer && layer !== 'absent') {
        layers.push(layer);
        statementOf.set(layer, statement);
      }
    }
    if (layers.length > limits.layers) {
      complain(ctx, 'too-many-layers', headerOf(statement), `${label} has more than ${limits.layers} layers`, {
        hint: 'a wall has a few; check what it is made of',
      });
      layers.length = limits.layers;
      partial.add(layers);
      return layers;
    }
  }
  if (!whole) partial.add(layers);
  else reportLooseFixings(ctx, layers, statementOf);
  return layers;
}

/** What a line brings that names an assembly; undefined when the line is a layer of its own. */
function innerAssembly(
  ctx: CheckContext,
  statement: Statement,
  find: FindAssembly,
): { readonly layers: readonly AssemblyLayer[] | undefined } | undefined {
  const name = statement.fact?.keyword === '' && wordIn(statement, 'material');
  if (!name || !ctx.program.assemblies.has(name.word)) return undefined;
  const amount = statement.slots.get('amount');
  if (amount) {
    complain(
      hearing(ctx, statement),
      'amount-of-assembly',
      slotRange(statement, amount),
      `\`${name.word}\` is an assembly: its layers have their own thickness`,
      {
        hint: `write \`${name.word}\` alone`,
      },
    );
    return { layers: undefined };
  }
  return { layers: find(hearing(ctx, statement), name.word, name.range)?.layers };
}

/** Layer lists with a line that could not be read: nothing is concluded from their thickness. */
const partial = new WeakSet<readonly AssemblyLayer[]>();

/** True when a line of it could not be read, which has been reported. */
export function isPartial(layers: readonly AssemblyLayer[]): boolean {
  return partial.has(layers);
}

function readOne(ctx: CheckContext, statement: Statement, label: string): AssemblyLayer | 'absent' | undefined {
  const keyword = statement.fact!.keyword;
  if (keyword === 'air') return readAir(ctx, statement, label);
  if (keyword === 'frame') return readFrame(ctx, statement, label);
  if (keyword === 'channels' || keyword === 'clips') return readFixings(ctx, statement, label);
  const layer = readLayer(ctx, statement, label);
  if (!layer || layer === 'absent') return layer;
  if (layer.material.kind === 'lumber') {
    complain(
      ctx,
      'kind-does-not-fit',
      layer.materialRange,
      `\`${layer.material.name}\` is lumber, which makes frames, not layers`,
      { hint: boardHint(ctx, layer.material.name) },
    );
    return undefined;
  }
  return layer;
}

function readAir(ctx: CheckContext, statement: Statement, label: string): AirLayer | 'absent' | undefined {
  const thickness = numberIn(ctx, statement, 'thickness', {
    dimension: 'length',
    noun: 'the thickness of an air gap',
    label: `${label}, air`,
    fact: 'air',
    min: 0,
    usual: { min: 0, max: 1, text: 'gaps are narrower than 1 m' },
  });
  if (!thickness) return undefined;
  if (thickness.sourced.value === 0) return 'absent';
  return { kind: 'air', thickness: thickness.sourced, range: wholeOf(statement) };
}

function readFrame(ctx: CheckContext, statement: Statement, label: string): FrameLayer | undefined {
  const about = `${label}, frame`;
  const size = frameSize(ctx, statement, about);
  const spacing = numberIn(ctx, statement, 'spacing', {
    dimension: 'length',
    noun: 'the distance between studs',
    label: `${about}: every`,
    fact: 'frame',
    aboveZero: true,
    usual: { min: 0, max: WIDEST_SPACING, text: 'studs stand at most 1.2 m apart, the width of a board' },
  });
  const lumber = lumberOf(ctx, statement, about);
  const reader = statement.block && readBlock(ctx, statement, about);
  const fill = readFill(ctx, reader, about, size?.depth);
  const screws = lumber && screwsOf(reader, ctx, statement, about, lumber);
  if (!size || !spacing || !lumber) return undefined;
  if (spacing.sourced.value <= size.width.value) {
    complain(
      ctx,
      'studs-touch',
      spacing.sourced.range,
      `studs ${text(size.width)} wide every ${text(spacing.sourced)} leave no cavity between them`,
      { hint: '`every` is the distance from centre to centre' },
    );
    return undefined;
  }
  const studs = hollowLumber(ctx, statement, lumber, size);
  if (!studs) return undefined;
  return {
    kind: 'frame',
    ...size,
    spacing: spacing.sourced,
    lumber: studs,
    ...(screws ? { screws } : {}),
    fill,
    range: wholeOf(statement),
  };
}

function text(value: Sourced<number>): string {
  return `\`${value.text ?? value.value}\``;
}

function frameSize(
  ctx: CheckContext,
  statement: Statement,
  about: string,
): { width: Sourced<number>; depth: Sourced<number> } | undefined {
  const nominal = slotOf(statement, 'nominal', 'nominal');
  if (nominal) {
    const range = slotRange(statement, nominal);
    const size = NOMINAL_LUMBER[nominal.text];
    if (!size) {
      const list = Object.keys(NOMINAL_LUMBER)
        .map((name) => `\`${name}\``)
        .join(', ');
      complain(ctx, 'unknown-lumber', range, `\`${nominal.text}\` is no nominal lumber; known are ${list}`, {
        hint: 'write the true size, like `45 mm x 70 mm`',
      });
      return undefined;
    }
    const side = (value: number, which: string): Sourced<number> =>
      keep(ctx, `${about}: ${which}`, 'frame', 'length', {
        value,
        origin: {
          kind: 'given',
          evidence: 'common-practice',
          source: `dressed size of nominal ${nominal.text} lumber`,
        },
        range,
        text: nominal.text,
      });
    return { width: side(size.width, 'width'), depth: side(size.depth, 'depth') };
  }
  const width = numberIn(ctx, statement, 'width', {
    dimension: 'length',
    noun: 'the width of a stud',
    label: `${about}: width`,
    fact: 'frame',
    aboveZero: true,
    usual: { min: 0.0005, max: 0.3, text: 'studs are 0.5 to 300 mm wide' },
  });
  const depth = numberIn(ctx, statement, 'depth', {
    dimension: 'length',
    noun: 'the depth of a stud',
    label: `${about}: depth`,
    fact: 'frame',
    aboveZero: true,
    usual: { min: 0.005, max: 0.6, text: 'studs are 5 to 600 mm deep' },
  });
  return width && depth && { width: width.sourced, depth: depth.sourced };
}

function lumberOf(ctx: CheckContext, statement: Statement, about: string): Material | undefined {
  const named = wordIn(statement, 'lumber');
  if (named) {
    const material = materialNamed(hearing(ctx, statement), named.word, named.range, 'frame');
    if (!material || material.kind === 'lumber') return material;
    complain(
      ctx,
      'kind-does-not-fit',
      named.range,
      `\`${named.word}\` is a ${material.kind} material; a frame is made of lumber`,
      {
        hint:
          named.word === 'steel-sheet'
            ? 'studs of folded steel are `steel-stud`'
            : 'name a material of kind `lumber`, or leave `of` out',
      },
    );
    return undefined;
  }
  const entry = defaultOf('stud-lumber');
  const name = DEFAULT_LUMBER;
  const range = headerOf(statement);
  keep(ctx, `${about}: lumber`, 'stud-lumber', 'text', {
    value: name,
    origin: { kind: 'default', name: entry.name, evidence: entry.evidence, source: entry.source },
    range,
  });
  const own = ctx.program.materials.get(name);
  return own ? declaredMaterial(ctx, name) : defaultLumber(ctx, statement);
}

/** Without the catalogue a frame still has a density: that of the catalogue's softwood, marked as the default it is. */
function defaultLumber(ctx: CheckContext, statement: Statement): Material {
  const entry = defaultOf('stud-lumber');
  const range = headerOf(statement);
  const density = defaultOf('stud-density');
  const sourced = keep(ctx, 'lumber softwood: density', 'stud-density', 'density', {
    value: density.value as number,
    origin: { kind: 'default', name: density.name, evidence: density.evidence, source: density.source },
    range,
  });
  return {
    name: entry.value as string,
    kind: 'lumber',
    nameRange: range,
    range,
    density: sourced,
    fromCatalogue: false,
  };
}

function readFill(
  ctx: CheckContext,
  reader: BlockReader | undefined,
  about: string,
  depth: Sourced<number> | undefined,
): MaterialLayer | undefined {
  const fill = reader && factOf(reader, 'fill');
  const layer = fill && readLayer(ctx, fill, `${about}: fill`);
  if (!layer || layer === 'absent') return undefined;
  if (layer.material.kind !== 'porous') {
    complain(
      ctx,
      'kind-does-not-fit',
      layer.materialRange,
      `\`${layer.material.name}\` is a ${layer.material.kind} material; a cavity is filled with a porous one`,
    );
    return undefined;
  }
  if (depth && layer.thickness && layer.thickness.value > depth.value * 1.0001)
    warn(
      ctx,
      'fill-too-thick',
      layer.thickness.range,
      `a fill of ${text(layer.thickness)} does not fit into a frame ${text(depth)} deep`,
      {
        hint: 'a pressed fill is denser than its data say',
        related: [{ range: depth.range, message: `the frame is ${textOf(ctx, depth.range)} deep` }],
      },
    );
  return layer;
}

/** m; undefined when a layer or its thickness is unknown. Frames count with their depth. */
export function assemblyThickness(layers: readonly AssemblyLayer[]): number | undefined {
  if (partial.has(layers)) return undefined;
  let sum = 0;
  for (const layer of layers) {
    const own = layer.kind === 'frame' ? layer.depth : layer.thickness;
    if (!own) return undefined;
    sum += own.value;
  }
  return sum;
}
