export * from './delany-bazley-porous.js';
export * from './fibre-flow-resistivity.js';
export * from './johnson-champoux-allard-porous.js';
export * from './limp-frame.js';
export * from './miki-porous.js';
export * from './porous-medium.js';
