import type { Site } from '../model/booth-spec.js';
import type { Statement } from '../syntax/tree.js';
import { wordIn } from './block-reader.js';
import { type CheckContext, complain, meantHint, refer } from './context.js';

/** The neighbour in a slot of a line; undefined when there is no such part, null when none of that name is there, which is reported. */
export function readNeighbourName(
  ctx: CheckContext,
  statement: Statement,
  site: Site | undefined,
): string | undefined | null {
  const name = wordIn(statement, 'where');
  if (!name) return undefined;
  const known = site?.neighbours.map((neighbour) => neighbour.name) ?? [];
  if (!known.includes(name.word)) {
    if (!ctx.broken.has(name.word))
      complain(ctx, 'unknown-name', name.range, `no neighbour is called \`${name.word}\``, {
        hint: meantHint(ctx, name.word, known) ?? `add \`neighbour ${name.word} …\` to the site`,
      });
    return null;
  }
  refer(ctx, 'neighbour', name.word, name.range);
  return name.word;
}

/** The noise in a slot of a line; undefined when there is none of that name, which is reported. */
export function readNoiseName(
  ctx: CheckContext,
  statement: Statement,
  site: Site | undefined,
): { readonly name: string; readonly range: NonNullable<ReturnType<typeof wordIn>>['range'] } | undefined {
  const name = wordIn(statement, 'against');
  if (!name) return undefined;
  const source = site?.sources.find((candidate) => candidate.name === name.word);
  if (!source) {
    if (ctx.broken.has(name.word)) return undefined;
    const known = site?.sources.map((candidate) => candidate.name) ?? [];
    complain(ctx, 'unknown-name', name.range, `no noise is called \`${name.word}\``, {
      hint:
        meantHint(ctx, name.word, known) ??
        (site ? 'declare it in `site` with `noise`' : 'add a `site` block with this noise'),
    });
    return undefined;
  }
  refer(ctx, source.kind === 'impact' ? 'impact' : 'noise', name.word, name.range);
  return { name: name.word, range: name.range };
}
