import type { Material, MaterialLayer } from '../model/booth-spec.js';
import type { Origin, Sourced } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { wordIn } from './block-reader.js';
import { type CheckContext, complain, hearing, keep, wholeOf } from './context.js';
import { materialNamed } from './names.js';
import { type NumberRule, numberIn } from './read-value.js';
import { usualThickness } from './usual-thickness.js';

/** `'absent'` for a layer of no thickness, which variants use to switch one off. */
export type LayerAnswer = MaterialLayer | 'absent' | undefined;

/** A material and its amount, as in `gypsum-board 12.5 mm`; undefined when something is wrong and was reported. */
export function readLayer(
  ctx: CheckContext,
  statement: Statement,
  label: string,
  slots = { material: 'material', amount: 'amount' },
): LayerAnswer {
  const name = wordIn(statement, slots.material);
  const material = name && materialNamed(hearing(ctx, statement), name.word, name.range);
  if (!name || !material) {
    // Names in the amount count as used, but one message about the line is enough.
    numberIn({ ...ctx, problems: [] }, statement, slots.amount, amountRule(label, true, undefined));
    return undefined;
  }
  const about = `${label}, ${name.word}`;
  const amount = numberIn(ctx, statement, slots.amount, amountRule(about, canBeAbsent(material), material));
  if (!amount && statement.slots.has(slots.amount)) return undefined;
  if (!amount && !statement.complete) return undefined;
  if (amount?.sourced.value === 0) return 'absent';
  const base = { kind: 'material' as const, material, materialRange: name.range, range: wholeOf(statement) };
  if (amount?.dimension === 'mass-per-area') return byMass(ctx, base, amount.sourced);
  const thickness = amount?.sourced ?? material.thickness;
  const surfaceMass = amount
    ? massOf(material, amount.sourced)
    : (material.surfaceMass ?? (thickness && massOf(material, thickness)));
  const isThick = material.kind === 'panel' || material.kind === 'porous' || material.kind === 'lumber';
  if (!thickness && (isThick || !surfaceMass)) {
    complain(
      ctx,
      'amount-missing',
      name.range,
      `\`${name.word}\` needs ${amountWanted(material, isThick)}: the material has none of its own`,
    );
    return undefined;
  }
  if (!surfaceMass) {
    if (material.kind === 'cloth' || material.kind === 'covering' || material.kind === 'limp')
      complain(
        ctx,
        'mass-unknown',
        name.range,
        `the mass of \`${name.word}\` is unknown: it has neither a density nor a mass per area`,
        { hint: 'write its mass per area on this line, or add `density` to the material' },
      );
    return undefined;
  }
  keep(ctx, `${about}: mass per area`, 'surface-mass', 'mass-per-area', surfaceMass);
  return { ...base, thickness, surfaceMass };
}

function amountWanted(material: Material, isThick: boolean): string {
  if (isThick) return 'a thickness such as `12.5 mm`';
  const mass = 'a mass per area such as `4.9 kg/m2`';
  return material.density ? `a thickness such as \`3 mm\` or ${mass}` : mass;
}

const USUAL_MASS = { min: 0, max: 200, text: 'layers are lighter than 200 kg/m2' };

function amountRule(label: string, zeroMeansAbsent: boolean, material: Material | undefined): NumberRule {
  return {
    dimension: 'amount',
    noun: 'a thickness',
    label,
    fact: 'layer',
    min: 0,
    aboveZero: !zeroMeansAbsent,
    ...(material ? { usual: usualThickness(material) } : {}),
    usualMass: USUAL_MASS,
  };
}

/** What to write for a wood that is known as lumber only where a board belongs. */
export function boardHint(ctx: CheckContext, lumber: string): string {
  const board = `${lumber}-board`;
  return ctx.program.materials.has(board)
    ? `write \`${board}\` for boards of it, or \`frame … of ${lumber}\` for studs`
    : `declare the board: \`material ${board} { kind panel; density DENSITY; modulus PRESSURE }\``;
}

function canBeAbsent(material: Material): boolean {
  return material.kind !== 'panel' && material.kind !== 'lumber';
}

/** Density times thickness, or the material's own mass per area scaled to the thickness. */
function massOf(material: Material, thickness: Sourced<number>): Sourced<number> | undefined {
  const { density } = material;
  if (density) return derived(density.value * thickness.value, 'density times thickness', density, thickness);
  const own = material.surfaceMass;
  if (!own) return undefined;
  if (!material.thickness) return material.kind === 'panel' || material.kind === 'porous' ? undefined : own;
  return derived(
    (own.value * thickness.value) / material.thickness.value,
    'own mass per area, scaled to the thickness',
    own,
    thickness,
  );
}

function byMass(
  ctx: CheckContext,
  base: Omit<MaterialLayer, 'thickness' | 'surfaceMass'>,
  mass: Sourced<number>,
): LayerAnswer {
  const { material } = base;
  const own =
    material.surfaceMass && material.thickness && Math.abs(material.surfaceMass.value - mass.value) < 1e-9
      ? material.thickness
      : undefined;
  const thickness =
    own ??
    (material.density
      ? derived(mass.value / material.density.value, 'mass per area over density', material.density, mass)
      : material.thickness);
  if (!thickness && (material.kind === 'panel' || material.kind === 'porous')) {
    complain(
      ctx,
      'amount-missing',
      mass.range,
      `\`${material.name}\` has no density, so \`${mass.text ?? ''}\` does not say how thick it is`,
      { hint: 'write its thickness' },
    );
    return undefined;
  }
  return { ...base, thickness, surfaceMass: mass };
}

/** The figure with the weaker backing gives the origin; the place is that of the line. */
function derived(value: number, how: string, figure: Sourced<number>, line: Sourced<number>): Sourced<number> {
  const backing = 'source' in figure.origin && figure.origin.source ? `${how}; ${figure.origin.source}` : how;
  const origin: Origin =
    figure.origin.kind === 'default'
      ? figure.origin
      : { kind: figure.origin.kind, evidence: 'derived', source: backing };
  const relative = Math.hypot((figure.tolerance ?? 0) / figure.value, (line.tolerance ?? 0) / line.value);
  return { value, origin, range: line.range, ...(relative > 0 ? { tolerance: Math.abs(value) * relative } : {}) };
}
