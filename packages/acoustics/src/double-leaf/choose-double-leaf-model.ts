import type { Air } from '../air/air-properties.js';
import { thirdOctaveBands } from '../bands/bands.js';
import { requireNumber } from '../errors/require-number.js';
import { connectionPathTransmission, type YieldingConnection } from './connection-path.js';
import { type DavyWall, davyAirborneAt } from './davy-double-leaf.js';
import { cavityLimitFrequency, doubleLeafResonance } from './double-leaf-resonance.js';
import { checkLeafCavity } from './leaf-cavity.js';
import { checkWallLeaf } from './wall-leaf.js';

/** What is known of a wall of two or more leaves. */
export type DoubleLeafQuestion = DavyWall & {
  /** Leaves in all; the middle ones of three or more are not described by `leaves`. */
  readonly leafCount: number;
  /** Whether modulus, thickness and density of every plate and the flow resistivity of the fill are known. */
  readonly layersKnown: boolean;
  /** Null without connections. */
  readonly connection: YieldingConnection | null;
};

/** A model for a wall of two or more leaves, and why it was taken. */
export type DoubleLeafModelChoice = {
  /**
   * Transfer matrices (`wallTransmissionLoss`, with connections along lines, rigid or yielding), closed form
   * (`davyDoubleLeaf`, `sharpDoubleLeaf`) or connections (`connectedDoubleLeaf`).
   */
  readonly model: 'transfer-matrix' | 'closed-form' | 'connections';
  /** Why, in sentences without a full stop. */
  readonly reasons: readonly string[];
  /** Hz, nominal; the lowest band in which connections carry more than air; null when in none. */
  readonly bridgedFrom: number | null;
};

/**
 * Which model of a double wall fits, and why.
 *
 * Rule: three or more leaves take transfer matrices. So do two leaves whose layers are all known, unless they hang together
 * at points that carry more than the air in any band above f0: transfer matrices compute lines, rigid or yielding, with
 * screws, as they compute fill and panel size. Of walls whose layers are not all known, those whose connections carry more
 * than the air take the connection path, all others the closed form.
 *
 * What carries more is judged by `connectionPathTransmission` and `davyDoubleLeaf`, which need no layers. That is not what
 * `wallTransmissionLoss` computes, which adds both of its own paths whatever is found here. Between two 8.5 kg/m2 boards on
 * 90 mm of fill, from 200 Hz to 2 kHz, the connection path passes 1 to 4 dB less than its studs, since the free waves of the driven
 * leaf are left out of it, and the closed form of the air passes 5 to 15 dB more than its air. Here connections therefore
 * count as carrying more only where they clearly do, and `bridgedFrom` may lie several bands too high.
 * Source: the validity ranges of the models (own rule). Errors: ArgumentError for a wall that cannot be.
 */
export function chooseDoubleLeafModel(wall: DoubleLeafQuestion, air: Air): DoubleLeafModelChoice {
  const [first, second] = wall.leaves;
  checkWallLeaf(first, 'the first leaf');
  checkWallLeaf(second, 'the second leaf');
  checkLeafCavity(wall.cavity);
  requireNumber('number of leaves', wall.leafCount, { atLeast: 2 });
  requireNumber('absorption of the cavity', wall.cavityAbsorption, { above: 0, atMost: 1 });
  const f0 = doubleLeafResonance(first.surfaceMass, second.surfaceMass, wall.cavity, air);
  const reasons: string[] = [];
  if (wall.leafCount > 2) {
    reasons.push(
      `${wall.leafCount} leaves have ${wall.leafCount - 1} resonances; the closed forms know one, so the whole chain is computed`,
    );
    if (wall.connection !== null)
      reasons.push('connections between more than two leaves are added by transfer matrices');
    return { model: 'transfer-matrix', reasons, bridgedFrom: null };
  }
  reasons.push(
    `the leaves resonate on the cavity at ${Math.round(f0)} Hz, below that the wall is one mass`,
    `above ${Math.round(cavityLimitFrequency(wall.cavity.depth, air))} Hz the cavity no longer acts as a spring`,
  );
  const { connection } = wall;
  const above = thirdOctaveBands.filter(({ exact }) => exact >= f0);
  const bridged =
    connection === null
      ? []
      : above.filter(
          ({ exact }) =>
            connectionPathTransmission(wall.leaves, connection, exact, air) >
            10 ** (-davyAirborneAt(wall, exact, air) / 10),
        );
  if (connection !== null && bridged.length > 0) {
    const from = bridged[0]!.nominal;
    reasons.push(
      `the connections carry more sound than the air in ${bridged.length} of ${above.length} bands above the resonance, first at ${from} Hz`,
    );
    const lines = connection.kind === 'lines';
    if (lines && wall.layersKnown) {
      reasons.push(
        `they are ${connection.compliance === 0 ? 'rigid' : 'yielding'} lines and every layer is known, which transfer matrices with studs compute`,
      );
      return { model: 'transfer-matrix', reasons, bridgedFrom: from };
    }
    if (!lines) reasons.push('transfer matrices compute connections along lines only, these are points');
    if (!wall.layersKnown) reasons.push('the layers are not all known');
    return { model: 'connections', reasons, bridgedFrom: from };
  }
  if (connection !== null) reasons.push('the connections carry less sound than the air in every band');
  if (wall.layersKnown) {
    reasons.push('every layer is known, so the waves in the fill and the size of the panel can be computed');
    return { model: 'transfer-matrix', reasons, bridgedFrom: null };
  }
  reasons.push('the layers are not all known; mass, critical frequency and loss factor suffice for the closed form');
  if (wall.cavityAbsorption < 0.5) reasons.push('the cavity absorbs little, where closed forms are rough guides');
  return { model: 'closed-form', reasons, bridgedFrom: null };
}
