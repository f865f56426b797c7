export {
  defaultRimAbsorption,
  frictionOnly,
  type GapLosses,
  losslessGaps,
  rimLossRate,
} from './air-gap-fluid.js';
export { type BandSampling, defaultBandTolerance } from './band-means.js';
export { bandSamples, defaultSamplesPerBand } from './band-samples.js';
export * from './band-transmission-loss.js';
export * from './cavity-resonances.js';
export {
  type DiffuseTransmission,
  diffuseTransmission,
  diffuseTransmissionLoss,
  type FieldConditions,
} from './diffuse-transmission-loss.js';
export { edgeLossFactor } from './edge-loss.js';
export { angularEvaluationLimit, angularTolerance } from './field-integral.js';
export { finiteRadiationFactor } from './finite-radiation-factor.js';
export * from './fixed-rule-transmission-loss.js';
export { connectionTransmission, couplingLossFactor, lineImpedance } from './frame-connection.js';
export { type GrainDirection, grainDirections } from './grain-directions.js';
export { type LateralMotion, lateralMotion } from './lateral-motion.js';
export * from './layer.js';
export * from './leaf.js';
export * from './mass-air-mass-frequency.js';
export { resonantTransmission } from './resonant-transmission.js';
export {
  type AbsorptionConditions,
  type Backing,
  diffuseAbsorption,
  normalIncidenceAbsorption,
  stackAbsorption,
} from './stack-absorption.js';
export { type SteelStud, steelStuds } from './steel-studs.js';
export * from './surface-mass.js';
export * from './transfer-matrix.js';
export { transmissionCoefficient } from './transmission-coefficient.js';
export { defaultStiffnessSpread, unlikeLeaves } from './unlike-leaves.js';
export * from './wall-transmission-loss.js';
