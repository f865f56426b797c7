export { loadAbsorptionCsv, loadTransmissionLossCsv } from './load-csv.js';
export { loadAbsorptionJson, loadTransmissionLossJson } from './load-json.js';
export * from './loaded-table.js';
