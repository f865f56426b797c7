import { readFileSync } from 'node:fs';
import path from 'node:path';

/** One layer as its source names it; m and kg/m2. */
export interface PrintedLayer {
  readonly material: string;
  readonly thickness?: number;
  readonly surfaceMass?: number;
  readonly inferred?: true;
}

/** One row of shared/open-data/transmission-loss.json; dB by band. */
export interface InsulationRow {
  readonly id: string;
  readonly name: string;
  readonly category: string;
  readonly quantity: string;
  readonly bandType: 'octave' | 'third-octave';
  readonly bandsHz: readonly number[];
  readonly values: readonly number[];
  readonly layers: readonly PrintedLayer[];
  readonly thickness?: number;
  readonly surfaceMass?: number;
  readonly framing?: string;
  readonly seals?: string;
  readonly publishedStc?: number;
  readonly notes?: readonly string[];
  readonly provenance: { readonly source: string; readonly where: string; readonly kind: string };
}

/** One row of shared/open-data/absorption.json. */
export interface AbsorptionDataRow {
  readonly id: string;
  readonly name: string;
  readonly category: string;
  readonly bandsHz: readonly number[];
  readonly values: readonly number[];
  readonly thickness?: number;
  readonly density?: number;
  readonly mounting?: 'A' | 'E400';
}

interface Figure {
  readonly fact: string;
  readonly unit: string;
  readonly value: number;
  readonly evidence: string;
  readonly source: string;
}

/** A material with its figures in SI units. */
export interface MaterialRow {
  readonly name: string;
  readonly title: string;
  readonly figures: readonly Figure[];
}

/** Everything that the comparison reads. */
export interface OpenData {
  readonly insulation: readonly InsulationRow[];
  readonly absorption: readonly AbsorptionDataRow[];
  /** The catalogue of the language. */
  readonly catalogue: readonly MaterialRow[];
  /** What test walls are made of beside the catalogue: the grain of wood, a damped sheet. */
  readonly testWallMaterials: readonly MaterialRow[];
}

/** Reads the open data of a checkout from its root folder. */
export function readOpenData(root: string): OpenData {
  const read = (file: string) => JSON.parse(readFileSync(path.join(root, 'shared/open-data', file), 'utf8'));
  return {
    insulation: read('transmission-loss.json'),
    absorption: read('absorption.json'),
    catalogue: read('materials.json'),
    testWallMaterials: read('test-wall-materials.json'),
  };
}

/** A figure of a material, in SI units. Errors: Error when the table has no such material or figure. */
export function figureOf(rows: readonly MaterialRow[], material: string, fact: string): number {
  const figure = rows.find(({ name }) => name === material)?.figures.find((each) => each.fact === fact);
  if (typeof figure?.value !== 'number') throw new Error(`no figure ${fact} of ${material} in the table of materials`);
  return figure.value;
}
