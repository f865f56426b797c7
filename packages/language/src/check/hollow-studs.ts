import type { Material } from '../model/booth-spec.js';
import type { Sourced } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, factOf } from './block-reader.js';
import { type CheckContext, complain, fallback, headerOf, textOf, warn } from './context.js';
import { numberIn } from './read-value.js';

/**
 * Light steel studs as lumber of their outline: the density is that of steel times the share of the outline that is steel, one
 * web and two flanges; lips are left out. Undefined when such a section cannot be folded, which is reported.
 */
export function hollowLumber(
  ctx: CheckContext,
  statement: Statement,
  lumber: Material,
  size: { readonly width: Sourced<number>; readonly depth: Sourced<number> },
): Material | undefined {
  const { gauge, density } = lumber;
  if (!gauge || !density) return lumber;
  const [width, depth] = [size.width.value, size.depth.value];
  if (2 * gauge.value >= Math.min(width, depth)) {
    complain(
      ctx,
      'gauge-too-thick',
      headerOf(statement),
      `a stud of \`${textOf(ctx, size.width.range)}\` cannot be folded from sheet ${gauge.text ?? gauge.value} thick`,
      {
        hint: 'write the width of the flange x the depth of the stud, or leave `gauge` out of a solid stud',
        related: [{ range: gauge.range, message: 'its gauge stands here' }],
      },
    );
    return undefined;
  }
  const share = (gauge.value * (2 * width + depth)) / (width * depth);
  const origin = {
    kind: density.origin.kind === 'catalogue' ? ('catalogue' as const) : ('given' as const),
    evidence: 'derived' as const,
    source: 'density times the share of the outline that is sheet: one web and two flanges, lips left out',
  };
  return { ...lumber, density: { value: density.value * share, origin, range: headerOf(statement) } };
}

/** Distance of the screws along studs of folded sheet; undefined for others, where it changes nothing. */
export function screwsOf(
  reader: BlockReader | undefined,
  ctx: CheckContext,
  statement: Statement,
  about: string,
  lumber: Material,
): Sourced<number> | undefined {
  const fact = reader && factOf(reader, 'screws');
  const given =
    fact &&
    numberIn(ctx, fact, 'value', {
      dimension: 'length',
      noun: 'the distance of screws',
      label: `${about}: screws`,
      fact: 'screws',
      aboveZero: true,
      usual: { min: 0.05, max: 1.2, text: 'screws stand 50 mm to 1.2 m apart' },
    })?.sourced;
  const yields = lumber.studStiffness !== undefined;
  if (lumber.gauge && !yields)
    return fact ? given : fallback<number>(ctx, 'screw-spacing', `${about}: screws`, 'length', headerOf(statement));
  if (fact)
    warn(ctx, 'screws-without-effect', headerOf(fact), '`screws` changes nothing here', {
      hint: yields
        ? `\`${lumber.name}\` has a \`stud-stiffness\`, which holds for the whole length of a stud`
        : 'solid studs count as touched all along; screws matter for light steel studs, like `of steel-stud`',
    });
  return undefined;
}
