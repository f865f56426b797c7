import type { Grille } from '../../model/vent-parts.js';
import { type BlockReader, factOf } from '../block-reader.js';
import { fallback, headerOf, wholeOf } from '../context.js';
import { numberIn } from '../read-value.js';

/** The face at the inner end; undefined when there is none or its size is wrong. */
export function readGrille(reader: BlockReader): Grille | undefined {
  const { ctx } = reader;
  const statement = factOf(reader, 'grille');
  if (!statement) return undefined;
  const label = `${reader.label}: grille`;
  const [width, height] = ['width', 'height'].map(
    (axis) =>
      numberIn(ctx, statement, axis, {
        dimension: 'length',
        noun: 'the size of a grille',
        label: `${label} ${axis}`,
        fact: 'grille',
        aboveZero: true,
        usual: { min: 0.02, max: 2, text: 'grilles are 20 mm to 2 m wide' },
      })?.sourced,
  );
  const free =
    numberIn(ctx, statement, 'free', {
      dimension: 'share',
      noun: 'the open share of a grille',
      label: `${label} free`,
      fact: 'grille',
      aboveZero: true,
      max: 1,
    })?.sourced ?? fallback<number>(ctx, 'grille-free-area', `${label} free`, 'share', headerOf(statement));
  return width && height && { range: wholeOf(statement), size: { width, height }, free };
}
