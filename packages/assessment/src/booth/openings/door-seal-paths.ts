import type { Air } from '@boothwright/acoustics';
import type { Door } from '@boothwright/language';
import { assemblyThickness } from '../../assembly/thickness.js';
import type { Memo } from '../../memo/memo.js';
import type { BoothPath } from '../booth-path.js';
import { slitPath } from './slit-path.js';

/**
 * The gaps round a door leaf: sides and head (2 h + w) as one, the threshold (w) as another, each as deep as the leaf is
 * thick. The threshold runs along the floor, so it counts as a gap at an edge.
 */
export function doorSealPaths(door: Door, air: Air, memo: Memo): BoothPath[] {
  const width = door.size.width.value;
  const height = door.size.height.value;
  const depth = assemblyThickness(door.leaf.layers);
  const gaps = [
    slitPath(
      {
        id: `door:${door.name}:perimeter`,
        kind: 'door-seal',
        name: `${door.name} perimeter seal`,
        range: door.perimeterGap.range,
        length: 2 * height + width,
        gap: door.perimeterGap,
        depth,
        position: 'mid',
      },
      air,
      memo,
    ),
    slitPath(
      {
        id: `door:${door.name}:threshold`,
        kind: 'door-seal',
        name: `${door.name} threshold`,
        range: door.thresholdGap.range,
        length: width,
        gap: door.thresholdGap,
        depth,
        position: 'edge',
      },
      air,
      memo,
    ),
  ];
  return gaps.filter((path) => path !== undefined);
}
