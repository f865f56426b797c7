import type { Layer, LineConnection, SeparateFrame } from '@boothwright/acoustics';
import type { AssemblyLayer, FrameLayer, Material, MaterialLayer, ResilientFixings } from '@boothwright/language';
import { oncePer } from '../memo/once-per.js';
import { type ConstructionKind, emptyCavity } from '../uncertainty/model-uncertainty.js';
import { onFixings, type Stud, studOf } from './stud-of.js';

/** One or more sheets in contact, moving together. */
export interface Leaf {
  /** kg/m2 */
  readonly mass: number;
  /** Names of its sheets, outside first. */
  readonly names: readonly string[];
}

/** What lies between two leaves. */
export interface Gap {
  /** m */
  readonly air: number;
  /** m of porous fill */
  readonly fill: number;
}

/** An assembly in the terms of the acoustics package, outside first. */
export interface Construction {
  readonly layers: readonly Layer[];
  readonly connections: readonly LineConnection[];
  /** Frames that stand between two leaves and tie neither to the other. */
  readonly separateFrames: readonly SeparateFrame[];
  readonly leaves: readonly Leaf[];
  /** Between leaf n and leaf n + 1. */
  readonly gaps: readonly Gap[];
  readonly kind: ConstructionKind;
}

/**
 * Frames that tie nothing divide the cavity between two leaves into bays when they take up more than this share of its
 * depth: above one half, sound that runs along the wall meets studs on most of its way. Evidence: judgement.
 */
export const dividingShare = 0.5;

/**
 * Builder's layers as physical layers.
 *
 * panel -> plate; limp -> limp sheet; covering and lumber laid flat -> limp sheet of their mass (their stiffness is left
 * out); porous -> porous with a limp frame; cloth -> screen; frame -> its fill against the outer leaf, then the remaining
 * air, and a line connection between the two sheets that touch the frame, be it through cloth: rigid for timber, yielding for
 * light steel and for boards on channels or clips (see `studOf`). Frames that
 * touch at most one leaf, such as two that stand back to back with air between them, tie nothing and divide the cavity
 * into bays by the spacing of their studs (see `dividingShare`). The studs' own mass
 * counts in the weight of the wall, not in the mass of a leaf. A layer of no thickness is absent. Air at the outside or
 * inside end is no gap between leaves and is left out.
 */
export const constructionOf: (assembly: readonly AssemblyLayer[]) => Construction = oncePer(built);

function built(assembly: readonly AssemblyLayer[]): Construction {
  const layers: Layer[] = [];
  const connections: LineConnection[] = [];
  const separateFrames: SeparateFrame[] = [];
  const leaves: { mass: number; names: string[] }[] = [];
  const gaps: Gap[] = [];
  let gap: { air: number; fill: number } | undefined = { air: 0, fill: 0 };
  let lastSheet = -1;
  let standing: { depth: number; spacing: number }[] = [];
  let pendingStud: ({ outer: number } & Stud) | undefined;
  let looseFixings: ResilientFixings | undefined;

  const addSpace = (air: number, fill: number) => {
    gap = gap === undefined ? { air, fill } : { air: gap.air + air, fill: gap.fill + fill };
  };
  const addAir = (thickness: number) => {
    if (thickness <= 0) return;
    pendingStud = undefined;
    looseFixings = undefined;
    if (layers.length > 0) layers.push({ kind: 'air-gap', thickness });
    addSpace(thickness, 0);
  };
  const addSheet = (layer: Layer, mass: number, name: string) => {
    layers.push(layer);
    const leaf = leaves[leaves.length - 1];
    const outer = lastSheet;
    const between = gap;
    if (gap === undefined && leaf !== undefined) {
      leaf.mass += mass;
      leaf.names.push(name);
    } else {
      if (leaf !== undefined && gap !== undefined) gaps.push(gap);
      leaves.push({ mass, names: [name] });
    }
    gap = undefined;
    lastSheet = layers.length - 1;
    if (pendingStud !== undefined) {
      const { outer, ...stud } = pendingStud;
      connections.push({ between: [outer, lastSheet], ...stud });
    } else if (leaf !== undefined && between !== undefined && dividesGap(standing, between)) {
      separateFrames.push(...standing.map(({ spacing }) => ({ between: [outer, lastSheet] as const, spacing })));
    }
    pendingStud = undefined;
    standing = [];
  };
  const addMaterial = (entry: MaterialLayer) => {
    const layer = physicalLayer(entry);
    if (layer === undefined) return;
    if (layer.kind === 'plate') addSheet(layer, layer.density * layer.thickness, entry.material.name);
    else if (layer.kind === 'limp-sheet') addSheet(layer, layer.surfaceMass, entry.material.name);
    else if (layer.kind === 'air-gap') addAir(layer.thickness);
    else if (layer.kind === 'porous') {
      pendingStud = undefined;
      layers.push(layer);
      addSpace(0, layer.thickness);
    } else layers.push(layer);
  };
  const addFrame = (frame: FrameLayer) => {
    if (frame.depth.value <= 0) return;
    // Cloth over a sheet is too thin to keep a stud off it, so the stud is fixed to the sheet.
    const fixings = looseFixings;
    const touches = gap === undefined || fixings !== undefined;
    const outer = lastSheet;
    const fill = frame.fill === undefined ? undefined : clampedFill(frame.fill, frame.depth.value);
    if (fill !== undefined) addMaterial(fill);
    addAir(frame.depth.value - (fill?.thickness?.value ?? 0));
    standing.push({ depth: frame.depth.value, spacing: frame.spacing.value });
    if (touches) {
      pendingStud = { outer, ...studOf(frame, fixings) };
    }
  };
  const addFixings = (depth: number, fixings: ResilientFixings) => {
    const stud = pendingStud;
    const onSheet = gap === undefined;
    addAir(depth);
    if (stud !== undefined) pendingStud = { outer: stud.outer, ...onFixings(stud, fixings) };
    else if (onSheet) looseFixings = fixings;
  };

  for (const entry of assembly) {
    if (entry.kind === 'air') {
      if (entry.fixings === undefined) addAir(entry.thickness.value);
      else addFixings(entry.thickness.value, entry.fixings);
    } else if (entry.kind === 'frame') {
      addFrame(entry);
    } else {
      addMaterial(entry);
    }
  }
  while (layers[layers.length - 1]?.kind === 'air-gap') layers.pop();
  return { layers, connections, separateFrames, leaves, gaps, kind: kindOf(leaves.length, connections.length, gaps) };
}

function dividesGap(frames: readonly { depth: number }[], { air, fill }: Gap): boolean {
  const depth = frames.reduce((sum, frame) => sum + frame.depth, 0);
  return depth > dividingShare * (air + fill);
}

function kindOf(leaves: number, connections: number, gaps: readonly Gap[]): ConstructionKind {
  if (leaves === 0) return 'open';
  if (leaves === 1) return 'single-leaf';
  if (connections > 0) return 'framed-leaves';
  const empty = gaps.some(
    ({ air, fill }) => air + fill >= emptyCavity.depth && fill < emptyCavity.fillShare * (air + fill),
  );
  return empty ? 'empty-cavity' : 'separate-leaves';
}

/** A fill thicker than the frame is deep is pressed to the depth. */
function clampedFill(fill: MaterialLayer, depth: number): MaterialLayer {
  const thickness = fill.thickness;
  if (thickness === undefined || thickness.value <= depth) return fill;
  return { ...fill, thickness: { ...thickness, value: depth } };
}

/** Undefined for a layer that is absent or lets sound pass as if it were not there. */
function physicalLayer(entry: MaterialLayer): Layer | undefined {
  const { material } = entry;
  const thickness = entry.thickness?.value;
  const mass = entry.surfaceMass.value;
  switch (material.kind) {
    case 'panel':
      return panelLayer(material, thickness, mass);
    case 'porous': {
      if (thickness === undefined || thickness <= 0) return undefined;
      if (material.resistivity === undefined) return { kind: 'air-gap', thickness };
      const flowResistivity = material.resistivity.value;
      const density = material.density?.value;
      return density === undefined
        ? { kind: 'porous', thickness, flowResistivity }
        : { kind: 'porous', thickness, flowResistivity, density };
    }
    case 'cloth': {
      const flowResistance = material.flowResistance?.value;
      if (flowResistance === undefined) return mass > 0 ? { kind: 'limp-sheet', surfaceMass: mass } : undefined;
      return { kind: 'screen', flowResistance, surfaceMass: mass };
    }
    case 'limp':
    case 'covering':
    case 'lumber':
      return mass > 0 ? { kind: 'limp-sheet', surfaceMass: mass } : undefined;
  }
}

function panelLayer(material: Material, thickness: number | undefined, mass: number): Layer | undefined {
  if (thickness === undefined) return mass > 0 ? { kind: 'limp-sheet', surfaceMass: mass } : undefined;
  if (thickness <= 0) return undefined;
  const density = material.density?.value ?? mass / thickness;
  const { modulus, poisson, lossFactor } = material;
  // Without a stiffness only the mass can act; the language gives every panel a named default, so this is rare.
  if (modulus === undefined || poisson === undefined || lossFactor === undefined) {
    return { kind: 'limp-sheet', surfaceMass: density * thickness };
  }
  return {
    kind: 'plate',
    thickness,
    density,
    youngsModulus: modulus.value,
    ...(material.modulusAcross === undefined ? {} : { crossModulus: material.modulusAcross.value }),
    ...(material.shearModulus === undefined ? {} : { shearModulus: material.shearModulus.value }),
    poissonRatio: poisson.value,
    lossFactor: lossFactor.value,
  };
}
