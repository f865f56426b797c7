import type { Booth } from '../../model/booth-spec.js';
import { type CheckContext, complain } from '../context.js';
import { millimetres } from '../millimetres.js';
import { outerSize } from './outer-size.js';
import { SLACK } from './slack.js';

/** Panels are cut out of faces: a width beyond every face cuts nothing, a joint above the walls does not exist. */
export function checkPanels(ctx: CheckContext, booth: Booth): void {
  const { panels } = booth;
  if (!panels) return;
  const { width, depth, height } = outerSize(booth);
  const widest = Math.max(width, depth);
  if (panels.width.value > widest + SLACK)
    complain(
      ctx,
      'panels-wider-than-faces',
      panels.width.range,
      `panels may be ${millimetres(panels.width.value)} wide and no face is wider than ${millimetres(widest)}: every face is one panel`,
      { severity: 'hint' },
    );
  if (panels.split && panels.split.value >= height - SLACK)
    complain(
      ctx,
      'split-above-wall',
      panels.split.range,
      `a joint ${millimetres(panels.split.value)} above the lower edge of the walls is above them: the booth is ${millimetres(height)} high`,
      { hint: 'leave `split` out for panels of full height' },
    );
}
