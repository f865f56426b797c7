export { assessAssembly } from './assembly/assess-assembly.js';
export { referencePanel } from './assembly/reference-panel.js';
export { type AssessOptions, type Assessor, assess, createAssessor } from './assess.js';
export { createMemo, type Memo } from './memo/memo.js';
export type * from './result/result-document.js';
export { resultSchema } from './result/result-schema.js';
export { siteAir } from './site-air.js';
export { voiceBand, voiceBandMean } from './variants/changes.js';
