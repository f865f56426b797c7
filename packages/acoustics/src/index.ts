export * from './air/air-attenuation.js';
export * from './air/air-properties.js';
export * from './bands/bands.js';
export * from './bands/octave-levels-to-thirds.js';
export * from './bands/octave-transmission-loss.js';
export * from './bands/third-levels-to-octaves.js';
export * from './bands/thirds-of-octave.js';
export * from './composite/composite-transmission-loss.js';
export * from './criteria/noise-criterion.js';
export * from './criteria/noise-criterion-curve.js';
export * from './enclosure/box-modes.js';
export * from './enclosure/small-enclosure-level-difference.js';
export * from './enclosure/small-enclosure-limit.js';
export {
  defaultRimAbsorption,
  frictionOnly,
  type GapLosses,
  losslessGaps,
  rimLossRate,
} from './layered/air-gap-fluid.js';
export { bandSamples, defaultSamplesPerBand } from './layered/band-samples.js';
export * from './layered/band-transmission-loss.js';
export * from './layered/cavity-resonances.js';
export {
  type DiffuseTransmission,
  diffuseTransmission,
  diffuseTransmissionLoss,
  type FieldConditions,
} from './layered/diffuse-transmission-loss.js';
export { angularEvaluationLimit, angularTolerance } from './layered/field-integral.js';
export { finiteRadiationFactor } from './layered/finite-radiation-factor.js';
export { connectionTransmission, couplingLossFactor, lineImpedance } from './layered/frame-connection.js';
export * from './layered/layer.js';
export * from './layered/leaf.js';
export * from './layered/mass-air-mass-frequency.js';
export {
  type AbsorptionConditions,
  type Backing,
  diffuseAbsorption,
  normalIncidenceAbsorption,
  stackAbsorption,
} from './layered/stack-absorption.js';
export * from './layered/surface-mass.js';
export * from './layered/transfer-matrix.js';
export { transmissionCoefficient } from './layered/transmission-coefficient.js';
export * from './layered/wall-transmission-loss.js';
export * from './levels/energy-of.js';
export * from './levels/frequency-weighting.js';
export * from './levels/level-of.js';
export * from './levels/mean-level.js';
export * from './levels/scale-to-reading.js';
export * from './levels/sum-levels.js';
export * from './levels/weighted-total.js';
export type { Complex } from './math/complex.js';
export { heatRatio } from './openings/air-friction.js';
export * from './openings/aperture-transmission-loss.js';
export * from './openings/narrow-gap-medium.js';
export * from './openings/slit-transmission-loss.js';
export * from './panels/bending-stiffness.js';
export * from './panels/critical-frequency.js';
export * from './panels/first-panel-resonance.js';
export * from './panels/mass-law.js';
export * from './panels/panel-volume-impedance.js';
export * from './panels/plate.js';
export * from './panels/plate-impedance.js';
export * from './panels/radiation-efficiency.js';
export * from './porous/delany-bazley-porous.js';
export * from './porous/limp-frame.js';
export * from './porous/miki-porous.js';
export * from './porous/porous-medium.js';
export * from './ratings/adaptation-spectra.js';
export { type ReferenceCurveFit, ratingBands } from './ratings/reference-curve-fit.js';
export * from './ratings/sound-transmission-class.js';
export * from './ratings/spectrum-level-difference.js';
export * from './ratings/weighted-rating.js';
export * from './ratings/weighted-sound-reduction.js';
export * from './ratings/weighted-sound-reduction-fine.js';
export * from './rooms/air-absorption-area.js';
export * from './rooms/eyring-time.js';
export * from './rooms/received-level.js';
export * from './rooms/sabine-time.js';
export * from './rooms/schroeder-frequency.js';
export * from './sources/noise-shape.js';
export * from './sources/speech-spectrum.js';
export type { Co2Balance } from './ventilation/co2-balance.js';
export * from './ventilation/co2-concentration.js';
export * from './ventilation/co2-time-to.js';
export * from './ventilation/duct-bend-loss.js';
export * from './ventilation/duct-loss.js';
export { largestLinedDuctLoss } from './ventilation/duct-tables.js';
export * from './ventilation/end-reflection-loss.js';
export * from './ventilation/flow-for-co2.js';
export * from './ventilation/lined-rectangular-duct-loss.js';
export * from './ventilation/lined-round-duct-loss.js';
export * from './ventilation/steady-co2.js';
