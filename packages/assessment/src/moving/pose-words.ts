import type { PanelPose } from '../result/moving-result.js';
import { decimals } from '../text/decimals.js';

/** How a panel is held, in words. */
export function poseWords(pose: PanelPose, angleDeg: number, diagonal: boolean): string {
  const across = diagonal ? ', across the corners of the car' : '';
  const by = `${decimals(angleDeg, 0)} degrees`;
  switch (pose) {
    case 'upright':
      return `upright${across}`;
    case 'on-its-side':
      return `on its long edge${across}`;
    case 'flat':
      return `flat${across}`;
    case 'tilted':
      return `tilted ${by} in its own plane${across}`;
    case 'leaning':
      return `on its short edge, leaning ${by}${across}`;
    case 'leaning-on-its-side':
      return `on its long edge, leaning ${by}${across}`;
  }
}
