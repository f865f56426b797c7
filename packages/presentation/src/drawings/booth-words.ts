import type { Booth, Equipment, Lining, Vent } from '@boothwright/language';
import { formatNumber } from '../numbers/format-number.js';
import { type DisplayUnits, lengthText } from '../numbers/length-text.js';
import { layersThickness } from './layer-words.js';

/** What the drawings of a booth say of its parts: name, size, place. One row of the table each. */
export interface PartWords {
  readonly what: string;
  readonly size: string;
  readonly place: string;
}

export function doorWords(booth: Booth, name: string, units: DisplayUnits): PartWords {
  const door = booth.doors.find((one) => one.name === name);
  const window = booth.windows.find((one) => one.name === name);
  const opening = door ?? window;
  if (opening === undefined) return { what: name, size: '', place: '' };
  const size = `${lengthText(opening.size.width.value, units)} × ${lengthText(opening.size.height.value, units)}`;
  const offset = opening.offset === undefined ? '' : `, ${lengthText(opening.offset.value, units)} from its left edge`;
  const sill = window?.sill === undefined ? '' : `, sill ${lengthText(window.sill.value, units)}`;
  const swing = door?.swing === undefined ? '' : `, opens ${door.swing.value}`;
  return {
    what: `${door === undefined ? 'window' : 'door'} ${name}`,
    size,
    place: `${opening.face}${offset}${sill}${swing}`,
  };
}

export function ventWords(vent: Vent, units: DisplayUnits): PartWords {
  const { duct, fan } = vent;
  const size =
    duct.kind === 'round'
      ? `duct ${lengthText(duct.diameter.value, units)}`
      : `duct ${lengthText(duct.width.value, units)} × ${lengthText(duct.height.value, units)}`;
  const blows =
    fan === undefined
      ? []
      : [`fan ${[fan.direction?.value, `${formatNumber(fan.flow.value * 1000, 0)} L/s`].filter(Boolean).join(' ')}`];
  const boxes =
    vent.chambers.length === 0 ? [] : [`${vent.chambers.length} lined box${vent.chambers.length === 1 ? '' : 'es'}`];
  const maze = vent.maze === undefined ? [] : [`maze with ${vent.maze.turns.value} turns`];
  const path = [
    `${lengthText(vent.run.value, units)} long`,
    `${vent.bends.value} ${vent.bends.value === 1 ? 'bend' : 'bends'}`,
    ...boxes,
    ...maze,
    ...blows,
    `opens to ${vent.opensTo.value}`,
  ];
  return { what: `vent ${vent.name}`, size: [size, ...path].join(', '), place: vent.face };
}

export function placeWords(
  { x, y, z }: { readonly x: { value: number }; readonly y: { value: number }; readonly z: { value: number } },
  units: DisplayUnits,
): string {
  return `${lengthText(x.value, units)} from the left, ${lengthText(y.value, units)} from the front, ${lengthText(z.value, units)} up`;
}

export function liningWords(lining: Lining, units: DisplayUnits): PartWords {
  const layers = lining.layers.map((layer) => (layer.kind === 'material' ? layer.material.name : layer.kind));
  const cover = lining.cover.value < 1 ? `, on ${formatNumber(lining.cover.value * 100)} % of each` : '';
  return {
    what: `lining of ${layers.join(', ')}`,
    size: `${lengthText(layersThickness(lining.layers), units)}${cover}`,
    place: lining.faces.join(', '),
  };
}

/** `copy-stand copy`; once where name and kind are the same word. */
export function equipmentName({ kind, name }: Equipment): string {
  return kind.value === name ? name : `${kind.value} ${name}`;
}
