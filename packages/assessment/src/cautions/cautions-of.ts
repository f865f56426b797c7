import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { alarm } from './alarm.js';
import { combustion } from './combustion.js';
import { egress } from './egress.js';
import { electricity } from './electricity.js';
import { fanOff } from './fan-off.js';
import { fibreDust } from './fibre-dust.js';
import { fireBehaviour } from './fire-behaviour.js';
import { floorLoad } from './floor-load.js';
import { glazing } from './glazing.js';
import { lifting } from './lifting.js';
import { noFan } from './no-fan.js';
import { staleAir } from './stale-air.js';
import { timberFloor } from './timber-floor.js';
import { tipOver } from './tip-over.js';
import { uncertainty } from './uncertainty.js';

/** All cautions that the facts of the text call for, the most urgent first. docs/cautions.md lists every one. */
export function cautionsOf(context: JudgedContext): Caution[] {
  const cautions = [
    ...combustion(context),
    ...noFan(context),
    ...staleAir(context),
    ...fanOff(context),
    ...egress(context),
    ...alarm(context),
    ...fireBehaviour(context),
    ...floorLoad(context),
    ...timberFloor(context),
    ...glazing(context),
    ...electricity(context),
    ...lifting(context),
    ...tipOver(context),
    ...fibreDust(context),
    ...uncertainty(context),
  ];
  return [
    ...cautions.filter((entry) => entry.severity === 'stop'),
    ...cautions.filter((entry) => entry.severity !== 'stop'),
  ];
}
