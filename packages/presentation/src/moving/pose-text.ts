import type { PanelWay } from '@boothwright/assessment';

/** How to hold a panel, in few words. */
export function poseText({ pose, angleDeg, diagonal }: Pick<PanelWay, 'pose' | 'angleDeg' | 'diagonal'>): string {
  const degrees = `${Math.round(angleDeg)}°`;
  const words = {
    upright: 'upright',
    'on-its-side': 'on the long edge',
    flat: 'flat',
    tilted: `tilted ${degrees} in its plane`,
    leaning: `on the short edge, leaning ${degrees}`,
    'leaning-on-its-side': `on the long edge, leaning ${degrees}`,
  }[pose];
  return diagonal ? `${words}, across the corners` : words;
}
