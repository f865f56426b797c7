import type { Air } from '../air/air-properties.js';
import { gaussLegendre } from '../math/gauss-legendre.js';
import type { GapLosses } from './air-gap-fluid.js';
import type { Field, Layer, PanelSize } from './layer.js';
import { isPresent } from './prepared-stack.js';

/** A part of the energy in a cavity whose motion runs sideways with `share` of the squared trace of the incident wave. */
export type LateralMotion = { readonly share: 0 | 0.5 | 1; readonly weight: number };

/** Parts of the energy below this are counted with their neighbour: a resonance of 20 dB would add 0.4 dB. */
const negligible = 0.001;

/**
 * How the sound in a shallow cavity of this width and height moves sideways when a diffuse field presses on it.
 *
 * A wave that arrives at an angle presses on a cavity with the trace wavenumber k u, u = sin(theta) cos(phi), but between
 * two studs or two sides of a reveal only standing waves exist. One of them is the uniform motion, which runs nowhere and
 * takes sinc^2(k u b/2) of the energy; the others are taken to run as the trace does. Along a side b the uniform part is
 * w = < sinc^2(k u b/2) >, the mean over the unit circle that the traces of a diffuse field fill evenly. Both sides
 * together: nothing runs (w1 w2), one direction runs (half of the squared trace), both run.
 * Units: m, Hz; weights add up to 1. Source: derived. Valid for cavities thinner than half a wavelength; single standing
 * waves are smeared into a mean. A cavity so wide that nearly everything runs gives one part, share 1.
 */
export function lateralMotion({ width, height }: PanelSize, hz: number, air: Air): LateralMotion[] {
  const one = uniformPart(width, hz, air);
  const other = uniformPart(height, hz, air);
  const still = one * other;
  const half = one + other - 2 * still;
  if (still + half < negligible) return [{ share: 1, weight: 1 }];
  const parts: { share: LateralMotion['share']; weight: number }[] = [];
  if (still >= negligible) parts.push({ share: 0, weight: still });
  parts.push({ share: 0.5, weight: still >= negligible ? half : half + still });
  const running = 1 - still - half;
  if (running >= negligible) parts.push({ share: 1, weight: running });
  let sum = 0;
  for (const { weight } of parts) sum += weight;
  for (const part of parts) part.weight /= sum;
  return parts;
}

/** Half k b above which the mean is taken as the first two terms of its series for a wide cavity. */
const wide = 30;
const { nodes, weights } = gaussLegendre(24);
const mostUniformParts = 4000;
/** Made once: walls share their sides and their frequencies. The store holds values of a pure function. */
const uniformParts = new Map<number, number>();

function uniformPart(side: number, hz: number, air: Air): number {
  const x = (Math.PI * hz * side) / air.soundSpeed;
  if (x >= wide) return 2 / x - 1 / (x * x);
  const known = uniformParts.get(x);
  if (known !== undefined) return known;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    // u = sin t makes the density of the traces, (4/pi) sqrt(1 - u^2) du, smooth at the ends.
    const t = (Math.PI / 4) * (nodes[i]! + 1);
    const phase = x * Math.sin(t);
    const sinc = phase < 1e-6 ? 1 : Math.sin(phase) / phase;
    sum += weights[i]! * (sinc * Math.cos(t)) ** 2;
  }
  if (uniformParts.size >= mostUniformParts) uniformParts.delete(uniformParts.keys().next().value!);
  uniformParts.set(x, sum);
  return sum;
}

/** The losses of a wall's gaps for each part of the motion in them; the smallest cavity decides for all of them. */
export function byLateralMotion(losses: GapLosses, hz: number, air: Air): { losses: GapLosses; weight: number }[] {
  const bay = smallestBay(losses);
  if (bay === undefined) return [{ losses, weight: 1 }];
  return lateralMotion(bay, hz, air).map(({ share, weight }) => ({
    losses: { ...losses, lateralShare: share },
    weight,
  }));
}

/** A panel that is built of the layers in question: the field that meets it and what damps the sound in its gaps. */
export type BuiltPanel = { readonly field: Field; readonly losses: GapLosses };

/** A part of the motion in the cavities of several panels, and which of them have how much of it. */
export type SharedMotion = {
  readonly losses: GapLosses;
  /** As in `LateralMotion`. */
  readonly share: number;
  readonly fields: readonly Field[];
  /** Index of the panel of each field. */
  readonly panels: readonly number[];
  readonly weights: readonly number[];
};

/** Panels whose rims take as much, and the smallest cavity of each. */
type RimGroup = {
  readonly losses: GapLosses;
  readonly members: { readonly panel: number; readonly field: Field; readonly bay: PanelSize | undefined }[];
};

/** Groups of lists of panels, which a wall asks for at every frequency. The store holds values of a pure function. */
const groupsOfPanels = new WeakMap<readonly BuiltPanel[], readonly RimGroup[]>();

function rimGroups(panels: readonly BuiltPanel[]): readonly RimGroup[] {
  const known = groupsOfPanels.get(panels);
  if (known !== undefined) return known;
  const groups: RimGroup[] = [];
  panels.forEach(({ field, losses }, panel) => {
    let group = groups.find((other) => other.losses.rimRates === losses.rimRates);
    if (group === undefined) {
      group = { losses, members: [] };
      groups.push(group);
    }
    group.members.push({ panel, field, bay: smallestBay(losses) });
  });
  groupsOfPanels.set(panels, groups);
  return groups;
}

const unheld: readonly LateralMotion[] = [{ share: 1, weight: 1 }];

/**
 * `byLateralMotion` of several panels of the same layers. They share a part when it runs sideways alike and the rims take
 * as much, which is the case when they hold the same list of rates (`withSharedRates`): a stack of unlimited extent is then
 * the same for all of them. Parts with the same losses follow each other.
 */
export function sharedMotions(panels: readonly BuiltPanel[], hz: number, air: Air): SharedMotion[] {
  const motions: { losses: GapLosses; share: number; fields: Field[]; panels: number[]; weights: number[] }[] = [];
  for (const { losses, members } of rimGroups(panels)) {
    const first = motions.length;
    for (const { panel, field, bay } of members) {
      for (const { share, weight } of bay === undefined ? unheld : lateralMotion(bay, hz, air)) {
        let at = first;
        while (at < motions.length && motions[at]!.share !== share) at++;
        if (at === motions.length) motions.push({ losses, share, fields: [], panels: [], weights: [] });
        const motion = motions[at]!;
        motion.fields.push(field);
        motion.panels.push(panel);
        motion.weights.push(weight);
      }
    }
  }
  return motions;
}

function smallestBay({ bays }: GapLosses): PanelSize | undefined {
  let smallest: PanelSize | undefined;
  for (const bay of bays ?? []) {
    if (bay !== undefined && (smallest === undefined || bay.width < smallest.width)) smallest = bay;
  }
  return smallest;
}

/** A rate is moved by at most this share: what sound loses at a rim moves a level by 0.02 dB at most. */
const alike = 0.004;

/**
 * Panels of one build-up with their rates of loss at the rim replaced by those in the middle of a group of them where that
 * makes no difference: where no air gap is there to lose anything, or where the rates are alike.
 */
export function withSharedRates(panels: readonly BuiltPanel[], layers: readonly Layer[]): readonly BuiltPanel[] {
  if (panels.length < 2) return panels;
  const groups: BuiltPanel[][] = [];
  for (const panel of panels) {
    const group = groups.find((members) => layers.every((layer, i) => areAlike(layer, i, [...members, panel])));
    if (group === undefined) groups.push([panel]);
    else group.push(panel);
  }
  const shared = new Map<BuiltPanel, BuiltPanel>();
  for (const members of groups) {
    if (members.length === 1 || members[0]!.losses.rimRates === undefined) continue;
    const rimRates = layers.map((_, i) => middleOf(members.map((panel) => rateOf(panel, i))));
    for (const panel of members) shared.set(panel, { ...panel, losses: { ...panel.losses, rimRates } });
  }
  return panels.map((panel) => shared.get(panel) ?? panel);
}

function areAlike(layer: Layer, index: number, panels: readonly BuiltPanel[]): boolean {
  if (layer.kind !== 'air-gap' || !isPresent(layer)) return true;
  const rates = panels.map((panel) => rateOf(panel, index));
  return Math.max(...rates) - Math.min(...rates) <= 2 * alike * middleOf(rates);
}

function middleOf(rates: readonly number[]): number {
  return (Math.min(...rates) + Math.max(...rates)) / 2;
}

function rateOf({ losses }: BuiltPanel, index: number): number {
  return losses.rimRates?.[index] ?? 0;
}
