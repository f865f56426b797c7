export * from './expectations.js';
export { type MarkedText, markedText } from './marked-text.js';
export { type OpenSpecs, openSpecs, specsOf, viewOf } from './open-specs.js';
export { cursorAfter, smallBooth } from './small-booth.js';
export { wholeBooth } from './whole-booth.js';
