import type { AirLayer, AssemblyLayer } from '../model/booth-spec.js';
import type { Statement } from '../syntax/tree.js';
import { type CheckContext, complain, headerOf, wholeOf } from './context.js';
import { numberIn } from './read-value.js';

/** `channels …` or `clips …`: air as deep as they are, with springs across it. */
export function readFixings(ctx: CheckContext, statement: Statement, label: string): AirLayer | undefined {
  const kind = statement.fact!.keyword as 'channels' | 'clips';
  const [one, about] = [kind === 'channels' ? 'a channel' : 'a clip', `${label}, ${kind}`];
  const thickness = numberIn(ctx, statement, 'thickness', {
    dimension: 'length',
    noun: `the depth of ${one}`,
    label: `${about}: depth`,
    fact: kind,
    aboveZero: true,
    usual: { min: 0.005, max: 0.15, text: `${kind} hold a board 5 to 150 mm off the studs` },
  });
  const spacing = numberIn(ctx, statement, 'spacing', {
    dimension: 'length',
    noun: `the distance between ${kind}`,
    label: `${about}: every`,
    fact: kind,
    aboveZero: true,
    usual: { min: 0.1, max: 2, text: `${kind} stand 100 mm to 2 m apart` },
  });
  const stiffness = numberIn(ctx, statement, 'stiffness', {
    dimension: 'stiffness',
    noun: `the stiffness of ${one}`,
    label: `${about}: stiffness`,
    fact: kind,
    aboveZero: true,
    usual: { min: 1e3, max: 1e7, text: `${kind} give by a millimetre under 1 to 10 000 N` },
  });
  if (!thickness || !spacing || !stiffness) return undefined;
  return {
    kind: 'air',
    thickness: thickness.sourced,
    fixings: { kind, spacing: spacing.sourced, stiffness: stiffness.sourced },
    range: wholeOf(statement),
  };
}

/** Channels and clips hold a board off a frame, so each has a frame on one side and something else on the other. */
export function reportLooseFixings(
  ctx: CheckContext,
  layers: readonly AssemblyLayer[],
  statementOf: ReadonlyMap<AssemblyLayer, Statement>,
): void {
  layers.forEach((layer, index) => {
    if (layer.kind !== 'air' || !layer.fixings) return;
    const { kind } = layer.fixings;
    const range = headerOf(statementOf.get(layer)!);
    const [outer, inner] = [layers[index - 1], layers[index + 1]];
    const frames = [outer, inner].filter((beside) => beside?.kind === 'frame').length;
    if (frames === 0)
      complain(ctx, 'fixings-without-frame', range, `${kind} are fixed to a frame, and none stands next to these`, {
        hint: `write \`${kind} …\` on the line behind its \`frame\`, or before it, with the board on the other side`,
      });
    else if (frames === 2 || !outer || !inner || [outer, inner].some((beside) => beside.kind === 'air'))
      complain(ctx, 'fixings-without-board', range, `${kind} hold a board off a frame, and no board touches these`, {
        hint: `write the board on the line ${outer?.kind === 'frame' ? 'behind' : 'before'} \`${kind} …\``,
      });
  });
}
