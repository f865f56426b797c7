import type { PanelSize } from '@boothwright/acoustics';

/**
 * The size for which a bare assembly is predicted: 4.0 m x 2.5 m, about the 10 m2 test opening of laboratory
 * standards (from memory). In a booth each face has its own size, which changes the low bands by a few decibels.
 */
export const referencePanel: PanelSize = { width: 4.0, height: 2.5 };
