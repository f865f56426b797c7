export * from './choose-double-leaf-model.js';
export {
  connectionPathTransmission,
  steelStudCompliance,
  type YieldingConnection,
} from './connection-path.js';
export { connectedDoubleLeaf, type DavyWall, davyDoubleLeaf, davyLargestAngleDeg } from './davy-double-leaf.js';
export * from './double-leaf-resonance.js';
export { cavityAbsorptionRatio, cavityStiffness, type LeafCavity } from './leaf-cavity.js';
export type { LeafConditions } from './leaf-conditions.js';
export * from './plate-coupling.js';
export * from './resilient-connection.js';
export * from './sharp-connections.js';
export { type SharpWall, sharpDoubleLeaf } from './sharp-double-leaf.js';
export * from './triple-leaf.js';
export { singlePanelOfLeaf, type WallLeaf, wallLeafOf } from './wall-leaf.js';
