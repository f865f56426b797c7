export * from './male-speech-peaks.js';
export * from './microphone-self-noise.js';
export * from './noise-shape.js';
export * from './speech-level-in-noise.js';
export * from './speech-octaves-for-reading.js';
export * from './speech-spectrum.js';
export * from './speech-spectrum-at.js';
export * from './talker-sound-power.js';
