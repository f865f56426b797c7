export {
  type AbsorberConditions,
  absorberAbsorption,
  absorberAbsorptionAt,
  absorberSurfaceImpedance,
  type Incidence,
} from './absorber-absorption.js';
export * from './absorber-layer.js';
export * from './bessel-ratio.js';
export * from './curtain-absorption.js';
export * from './helmholtz-resonator.js';
export * from './hole-interaction.js';
export * from './perforated-impedance.js';
export * from './resonance-frequencies.js';
export { sampleRadiationImpedance } from './sample-radiation-impedance.js';
