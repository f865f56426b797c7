import type { Equipment, EquipmentKind } from '../model/inside-the-booth.js';
import type { Sourced } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, factOf, nameOf, readBlock, titleOf } from './block-reader.js';
import { type CheckContext, complain, fallback, headerOf, keep, wholeOf } from './context.js';
import { readPlace } from './read-place.js';
import { factChoice, factNumber, factNumberOr, numberIn, readBands } from './read-value.js';

/** Something in the booth; undefined when its place is not known. */
export function readEquipment(ctx: CheckContext, statement: Statement): Equipment | undefined {
  const named = nameOf(statement);
  if (!named) return undefined;
  const reader = readBlock(ctx, statement, `equipment ${named.name}`);
  const { label } = reader;
  const position = readPlace(ctx, statement, 'the place of equipment', label);
  const kind =
    factChoice<EquipmentKind>(reader, 'kind') ??
    fallback<EquipmentKind>(ctx, 'equipment-kind', `${label}: kind`, 'text', headerOf(statement));
  const size = readSize(reader);
  const tilt = factNumberOr(reader, 'tilt', 'equipment-tilt', {
    dimension: 'angle',
    noun: 'a tilt',
    min: -90,
    max: 90,
    maxText: 'at 90 deg it lies flat',
  });
  const mass = factNumber(reader, 'mass', {
    dimension: 'mass',
    noun: 'the mass of equipment',
    min: 0,
    usual: { min: 0, max: 300, text: 'what stands in a booth weighs less than 300 kg' },
  })?.sourced;
  const heat = factNumber(reader, 'heat', {
    dimension: 'power',
    noun: 'the heat of equipment',
    min: 0,
    usual: { min: 0, max: 1500, text: 'what stands in a booth gives off less than 1500 W' },
  })?.sourced;
  const power = factOf(reader, 'sound-power');
  const soundPower =
    power &&
    readBands(ctx, power, 'value', {
      dimension: 'level',
      noun: 'a sound power level',
      label: `${label}: sound-power`,
      fact: 'sound-power',
      weightings: ['none'],
      usual: { min: -20, max: 120, text: 'equipment has up to 120 dB' },
    });
  const absorption = factNumberOr(reader, 'absorbs', 'equipment-absorption', {
    dimension: 'share',
    noun: 'what a thing absorbs',
    min: 0,
    max: 1,
  });
  const mount = readMount(reader);
  if (!position) return undefined;
  return {
    ...named,
    ...titleOf(statement),
    range: wholeOf(statement),
    kind,
    position,
    size,
    tilt,
    mount,
    mass,
    heat,
    soundPower,
    absorption,
  };
}

/** Things may be as thin as a sheet of paper. */
function readSize(reader: BlockReader): Equipment['size'] {
  const statement = factOf(reader, 'size');
  if (!statement) return undefined;
  const [width, depth, height] = ['width', 'depth', 'height'].map(
    (axis) =>
      numberIn(reader.ctx, statement, axis, {
        dimension: 'length',
        noun: `the ${axis} of equipment`,
        label: `${reader.label}: ${axis}`,
        fact: 'size',
        aboveZero: true,
        usual: { min: 0.0001, max: 4, text: 'what stands in a booth is 0.1 mm to 4 m large' },
      })?.sourced,
  );
  return width && depth && height && { width, depth, height };
}

function readMount(reader: BlockReader): Sourced<'stands' | 'hangs'> | undefined {
  const { ctx, label } = reader;
  const [stands, hangs] = [factOf(reader, 'stands'), factOf(reader, 'hangs')];
  if (stands && hangs) {
    const [first, second] = stands.from < hangs.from ? [stands, hangs] : [hangs, stands];
    complain(ctx, 'stands-and-hangs', headerOf(second), `${label} cannot both hang and stand`, {
      hint: 'remove one of the two',
      related: [{ range: headerOf(first), message: 'the first stands here' }],
    });
    return undefined;
  }
  const line = stands ?? hangs;
  if (!line) return undefined;
  const value = stands ? ('stands' as const) : ('hangs' as const);
  return keep(ctx, `${label}: mount`, value, 'text', {
    value,
    origin: { kind: 'given' },
    range: headerOf(line),
    text: value,
  });
}
