import type { MaterialLayer } from '../../model/booth-spec.js';
import type { Statement } from '../../syntax/tree.js';
import { type CheckContext, complain } from '../context.js';
import { boardHint, readLayer } from '../read-layer.js';

/** `of MATERIAL 12 mm` of a box or a maze: the board it is built of; undefined when nothing is said or it is wrong. */
export function readBoxBoard(
  ctx: CheckContext,
  statement: Statement,
  label: string,
  what: string,
): MaterialLayer | undefined {
  if (!statement.slots.has('board')) return undefined;
  const layer = readLayer(ctx, statement, label, { material: 'board', amount: 'boardAmount' });
  if (!layer || layer === 'absent') return undefined;
  if (layer.material.kind === 'panel') return layer;
  complain(
    ctx,
    'kind-does-not-fit',
    layer.materialRange,
    `\`${layer.material.name}\` is a ${layer.material.kind} material; ${what} is built of a panel`,
    { hint: layer.material.kind === 'lumber' ? boardHint(ctx, layer.material.name) : undefined },
  );
  return undefined;
}
