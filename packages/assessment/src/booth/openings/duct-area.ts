import type { Vent } from '@boothwright/language';

/** Clear cross-section of a duct, m2. The stated size is the airway, inside any lining. */
export function ductArea({ duct }: Pick<Vent, 'duct'>): number {
  return duct.kind === 'round' ? (Math.PI / 4) * duct.diameter.value ** 2 : duct.width.value * duct.height.value;
}
