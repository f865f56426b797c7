import type { PathResult } from '../result/result-document.js';

/** A path as a performer would name it. */
export function pathWords(path: PathResult): string {
  switch (path.kind) {
    case 'face':
      return path.name === 'roof' || path.name === 'floor' ? `the ${path.name}` : `the ${path.name} wall`;
    case 'door':
      return `the leaf of door ${path.name}`;
    case 'door-seal':
      return `the gap at ${path.name}`;
    case 'window':
      return `window ${path.name}`;
    case 'vent':
      return `vent ${path.name}`;
    case 'slit':
      return `slit ${path.name}`;
    case 'hole':
      return `hole ${path.name}`;
  }
}
