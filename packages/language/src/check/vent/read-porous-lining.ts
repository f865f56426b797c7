import type { MaterialLayer } from '../../model/booth-spec.js';
import type { Statement } from '../../syntax/tree.js';
import { type CheckContext, complain } from '../context.js';
import { readLayer } from '../read-layer.js';

/** `lined MATERIAL 25 mm` of a duct, a box or a maze; undefined when it is bare or wrong. */
export function readPorousLining(
  ctx: CheckContext,
  statement: Statement,
  label: string,
  what: string,
): MaterialLayer | undefined {
  if (!statement.slots.has('material')) return undefined;
  const layer = readLayer(ctx, statement, label);
  if (!layer || layer === 'absent') return undefined;
  if (layer.material.kind === 'porous') return layer;
  complain(
    ctx,
    'kind-does-not-fit',
    layer.materialRange,
    `\`${layer.material.name}\` is a ${layer.material.kind} material; ${what} is lined with a porous one`,
    { hint: 'name fibre or open foam, such as `glass-wool`' },
  );
  return undefined;
}
