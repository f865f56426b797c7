import type { Material, MaterialKind, Size2 } from '../model/booth-spec.js';
import type { Evidence, Origin, Sourced } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { andList } from '../text/and-list.js';
import { materialBlock } from '../vocabulary/material-facts.js';
import { shapeText } from '../vocabulary/shape-text.js';
import { type BlockReader, factOf, isUnfinished, nameOf, readBlock, slotOf, titleOf, wordIn } from './block-reader.js';
import {
  type CheckContext,
  complain,
  fallback,
  headerOf,
  isCatalogue,
  keep,
  slotRange,
  warn,
  wholeOf,
} from './context.js';
import { evidenceOf, type NumberRule, numberIn, originOf, readBands, readPrice } from './read-value.js';

/** What densities occur, kg/m3, by kind: a remembered spread, wide on purpose, that only serves to catch slips. */
const USUAL_DENSITY: Readonly<Record<MaterialKind, readonly [number, number]>> = {
  panel: [15, 12_000],
  limp: [300, 12_000],
  porous: [5, 400],
  cloth: [20, 2000],
  covering: [20, 2500],
  lumber: [200, 1200],
};

/** Of studs folded from aluminium or steel sheet, kg/m3; from memory as well. */
const METAL_DENSITY = [2500, 8100] as const;

/** What a material of a kind cannot do without; one of each group suffices. */
const NEEDED: Readonly<Record<MaterialKind, readonly (readonly string[])[]>> = {
  panel: [['density'], ['modulus']],
  limp: [['density', 'surface-mass']],
  porous: [['density'], ['resistivity']],
  cloth: [['flow-resistance']],
  covering: [],
  lumber: [['density']],
};

/** Undefined when not even the kind is known. */
export function readMaterial(ctx: CheckContext, statement: Statement): Material | undefined {
  const named = nameOf(statement);
  if (!named) return undefined;
  const label = `material ${named.name}`;
  const reader = readBlock(ctx, statement, label);
  const kindStatement = factOf(reader, 'kind');
  const kind = kindStatement && (wordIn(kindStatement, 'value')?.word as MaterialKind | undefined);
  const source = readSource(reader);
  if (!kind) return undefined;
  const facts = figures(reader, kind, source && { evidence: source.evidence, source: source.text.value });
  reportNeeded(reader, kind);
  reportIdle(reader, kind);
  reportStifferAcross(ctx, facts);
  return {
    ...named,
    ...titleOf(statement),
    range: wholeOf(statement),
    kind,
    ...facts,
    ...(source ? { source: source.text } : {}),
    fromCatalogue: isCatalogue(statement.file),
  };
}

interface MaterialSource {
  readonly evidence: Evidence;
  readonly text: Sourced<string>;
}

function readSource(reader: BlockReader): MaterialSource | undefined {
  const statement = factOf(reader, 'source');
  const slot = statement && slotOf(statement, 'value', 'string');
  if (!statement || !slot) return undefined;
  const evidence = evidenceOf(wordIn(statement, 'evidence')?.word);
  const origin = isCatalogue(statement.file)
    ? ({ kind: 'catalogue', evidence, source: slot.value } as const)
    : ({ kind: 'given', evidence, source: slot.value } as const);
  return { evidence, text: { value: slot.value, origin, range: slotRange(statement, slot), text: slot.value } };
}

type Shared = { readonly evidence: Evidence; readonly source: string } | undefined;

/** Reads one figure of a material by its keyword. */
function figureOf(
  reader: BlockReader,
  shared: Shared,
): (keyword: string, rule: Omit<NumberRule, 'label' | 'fact'>) => Sourced<number> | undefined {
  const { ctx, label } = reader;
  return (keyword, rule) => {
    const statement = factOf(reader, keyword);
    const about = { ...rule, label: `${label}: ${keyword}`, fact: keyword };
    return statement && numberIn(ctx, statement, 'value', about, originOf(statement, shared))?.sourced;
  };
}

type Figures = Partial<Omit<Material, 'name' | 'title' | 'nameRange' | 'range' | 'kind' | 'source' | 'fromCatalogue'>>;

function figures(reader: BlockReader, kind: MaterialKind, shared: Shared): Figures {
  const { ctx, label } = reader;
  const number = figureOf(reader, shared);
  const isHollow = kind === 'lumber' && reader.facts.has('gauge');
  const [low, high] = isHollow ? METAL_DENSITY : USUAL_DENSITY[kind];
  const density = number('density', {
    dimension: 'density',
    noun: 'a density',
    aboveZero: true,
    max: 23_000,
    usual: {
      min: low,
      max: high,
      text: `${isHollow ? 'folded studs' : `\`${kind}\` materials`} have ${low} to ${high} kg/m3`,
    },
  });
  const surfaceMass = number('surface-mass', {
    dimension: 'mass-per-area',
    noun: 'a mass per area',
    aboveZero: true,
    usual: { min: 0.01, max: 200, text: 'sheets have 0.01 to 200 kg/m2' },
  });
  const thickness = number('thickness', {
    dimension: 'length',
    noun: 'a thickness',
    aboveZero: true,
    usual: { min: 0.00002, max: 0.5, text: 'layers have 0.02 to 500 mm' },
  });
  const modulus = number('modulus', {
    dimension: 'pressure',
    noun: 'a modulus',
    aboveZero: true,
    usual: { min: 1e6, max: 4e11, text: 'boards, glass and metals have 0.001 to 400 GPa' },
  });
  const modulusAcross = number('modulus-across', {
    dimension: 'pressure',
    noun: 'a modulus across the grain',
    aboveZero: true,
    usual: { min: 1e6, max: 4e11, text: 'wood has 0.2 to 2 GPa across its grain' },
  });
  const shearModulus = number('shear-modulus', {
    dimension: 'pressure',
    noun: 'a shear modulus',
    aboveZero: true,
    usual: { min: 1e5, max: 2e11, text: 'soft cores have 0.001 GPa, wood about 0.7 GPa, steel 80 GPa' },
  });
  const poisson = number('poisson', { dimension: 'count', noun: 'Poisson’s ratio', min: 0, max: 0.5 });
  const lossFactor = number('loss-factor', { dimension: 'count', noun: 'a loss factor', aboveZero: true, max: 1 });
  const resistivity = number('resistivity', {
    dimension: 'resistivity',
    noun: 'a flow resistivity',
    aboveZero: true,
    usual: { min: 200, max: 1_500_000, text: 'fibre and foam have 0.2 to 1500 kPa.s/m2' },
  });
  const flowResistance = number('flow-resistance', {
    dimension: 'flow-resistance',
    noun: 'a flow resistance',
    min: 0,
    usual: { min: 1, max: 10_000, text: 'cloths have 1 to 10000 Pa.s/m' },
  });
  const header = headerOf(reader.header);
  const isPanel = kind === 'panel';
  const withDefault = (
    value: Sourced<number> | undefined,
    name: 'poisson' | 'loss-factor',
  ): Sourced<number> | undefined =>
    value ?? (isPanel ? fallback<number>(ctx, name, `${label}: ${name}`, 'count', header) : undefined);
  return defined({
    density,
    surfaceMass,
    thickness,
    modulus,
    modulusAcross,
    shearModulus,
    poisson: withDefault(poisson, 'poisson'),
    lossFactor: withDefault(lossFactor, 'loss-factor'),
    resistivity,
    flowResistance,
    ...others(reader, shared),
  });
}

function others(reader: BlockReader, shared: Shared): Figures {
  const { ctx, label } = reader;
  const number = figureOf(reader, shared);
  const table = factOf(reader, 'absorption');
  const price = factOf(reader, 'price');
  const fire = factOf(reader, 'fire-class');
  const sheet = factOf(reader, 'sheet');
  const fireText = fire && slotOf(fire, 'value', 'string');
  return defined({
    absorption:
      table &&
      readBands(
        ctx,
        table,
        'value',
        {
          dimension: 'count',
          noun: 'an absorption coefficient',
          label: `${label}: absorption`,
          fact: 'absorption',
          min: 0,
          usual: { min: 0, max: 1.2, text: 'coefficients lie between 0 and about 1.2' },
        },
        originOf(table, shared),
      ),
    price: price && readPrice(ctx, price, 'value', `${label}: price`, originOf(price, shared)),
    sheet: sheet && readSheet(ctx, sheet, label, originOf(sheet, shared)),
    stockLength: number('stock', { ...SOLD, noun: 'the length it is sold in' }),
    gauge: number('gauge', {
      dimension: 'length',
      noun: 'a gauge',
      aboveZero: true,
      usual: {
        min: 0.0003,
        max: 0.003,
        text: 'studs are folded from 0.4 to 2 mm; nearly all partition studs from 0.5 or 0.6 mm',
      },
    }),
    studStiffness: number('stud-stiffness', {
      dimension: 'pressure',
      noun: 'the stiffness of a stud',
      aboveZero: true,
      usual: { min: 1e4, max: 1e9, text: 'studs that yield have 0.1 to 100 MPa' },
    }),
    fireClass:
      fire &&
      fireText &&
      keep(ctx, `${label}: fire-class`, 'fire-class', 'text', {
        value: fireText.value,
        origin: originOf(fire, shared),
        range: slotRange(fire, fireText),
        text: fireText.value,
      }),
  });
}

/** Sheets, rolls and bars as shops have them, in metres. */
const SOLD = {
  dimension: 'length',
  aboveZero: true,
  max: 100,
  maxText: 'it must be smaller than 100 m',
  usual: { min: 0.2, max: 30, text: 'sheets, bars and rolls have 0.2 to 30 m' },
} as const;

function readSheet(ctx: CheckContext, statement: Statement, label: string, origin: Origin): Size2 | undefined {
  const [width, height] = ['width', 'height'].map(
    (axis) =>
      numberIn(
        ctx,
        statement,
        axis,
        { ...SOLD, noun: `the ${axis} of a sheet`, label: `${label}: sheet ${axis}`, fact: 'sheet' },
        origin,
      )?.sourced,
  );
  return width && height && { width, height };
}

function reportNeeded(reader: BlockReader, kind: MaterialKind): void {
  const missing = NEEDED[kind].filter((group) => !group.some((keyword) => reader.facts.has(keyword)));
  if (missing.length === 0 || !reader.header.complete || isUnfinished(reader)) return;
  const list = missing.map((group) => group.map((keyword) => `\`${keyword}\``).join(' or ')).join(' and ');
  const shapes = missing.map(([keyword]) => {
    const { sourced: _, ...fact } = materialBlock.facts.find((candidate) => candidate.keyword === keyword)!;
    return `\`${shapeText(fact)}\``;
  });
  complain(
    reader.ctx,
    'fact-missing',
    headerOf(reader.header),
    `${reader.label} has no ${list}, which a ${kind} material needs`,
    {
      // The shape and not an example: an invented figure must not end up in a spec.
      hint: `add ${andList(shapes)}`,
      lacks: missing.map(([keyword]) => keyword!),
    },
  );
}

/** Figures that only one kind of material has a use for. */
const ONLY_OF: Readonly<Record<string, MaterialKind>> = {
  'modulus-across': 'panel',
  'shear-modulus': 'panel',
  gauge: 'lumber',
  'stud-stiffness': 'lumber',
};

function reportIdle(reader: BlockReader, kind: MaterialKind): void {
  for (const [keyword, only] of Object.entries(ONLY_OF)) {
    const statement = only === kind ? undefined : factOf(reader, keyword);
    if (statement)
      warn(
        reader.ctx,
        'figure-without-effect',
        headerOf(statement),
        `\`${keyword}\` changes nothing in a ${kind} material`,
        {
          hint: `it is a figure of \`kind ${only}\``,
        },
      );
  }
}

function reportStifferAcross(ctx: CheckContext, { modulus, modulusAcross }: Figures): void {
  if (!modulus || !modulusAcross || modulusAcross.value <= modulus.value) return;
  warn(
    ctx,
    'stiffer-across',
    modulusAcross.range,
    `\`${modulusAcross.text}\` across the grain is stiffer than \`${modulus.text}\` along it`,
    {
      hint: '`modulus` is that along the grain, the stiffer way',
      related: [{ range: modulus.range, message: 'the modulus along the grain stands here' }],
    },
  );
}

/** Drops what is undefined, so that an optional figure is absent rather than present and empty. */
function defined<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
