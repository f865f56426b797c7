export * from './composite-transmission-loss.js';
