export * from './microphone-self-noise.js';
export * from './noise-shape.js';
export * from './speech-spectrum.js';
