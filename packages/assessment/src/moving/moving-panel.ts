import type { PanelResult } from '../result/build-result.js';

/** What moving needs to know of a panel. */
export type MovingPanel = Pick<
  PanelResult,
  'number' | 'name' | 'face' | 'leaf' | 'widthM' | 'heightM' | 'thicknessM' | 'massKg' | 'massMissing' | 'baseM' | 'box'
>;

/** Panels of a face that meet the weather of the room: all but an inner shell. */
export function outerPanels(panels: readonly MovingPanel[], face: string): MovingPanel[] {
  return panels.filter((panel) => panel.face === face && panel.leaf !== 'inner');
}
