export * from './noise-shape.js';
export * from './speech-spectrum.js';
