import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { alarm } from './alarm.js';
import { children } from './children.js';
import { combustion } from './combustion.js';
import { cuttingDust } from './cutting-dust.js';
import { egress } from './egress.js';
import { electricity } from './electricity.js';
import { fanOff } from './fan-off.js';
import { fibreDust } from './fibre-dust.js';
import { fireBehaviour } from './fire-behaviour.js';
import { floorLoad } from './floor-load.js';
import { glazing } from './glazing.js';
import { headphones } from './headphones.js';
import { lifting } from './lifting.js';
import { moisture } from './moisture.js';
import { noFan } from './no-fan.js';
import { offGassing } from './off-gassing.js';
import { sprinklers } from './sprinklers.js';
import { staleAir } from './stale-air.js';
import { tenure } from './tenure.js';
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
    ...moisture(context),
    ...fibreDust(context),
    ...uncertainty(context),
    ...sprinklers(context),
    ...children(context),
    ...cuttingDust(context),
    ...offGassing(context),
    ...headphones(context),
    ...tenure(context),
  ];
  return [
    ...cautions.filter((entry) => entry.severity === 'stop'),
    ...cautions.filter((entry) => entry.severity === 'caution'),
    ...cautions.filter((entry) => entry.severity === 'note'),
  ];
}
