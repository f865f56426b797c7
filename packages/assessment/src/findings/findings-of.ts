import type { JudgedContext } from '../assessment-context.js';
import type { Finding } from '../result/result-document.js';
import { boothUnread } from '../unread/booth-unread.js';
import { boxyDecay } from './boxy-decay.js';
import { cavityResonanceInBand } from './cavity-resonance-in-band.js';
import { costOverBudget } from './cost-over-budget.js';
import { dbaPassesDbfsFails } from './dba-passes-dbfs-fails.js';
import { fanSetsTheNoise } from './fan-sets-the-noise.js';
import { fanTooWeak } from './fan-too-weak.js';
import { fastAirInDuct } from './fast-air-in-duct.js';
import { floorLoadOverLimit } from './floor-load-over-limit.js';
import type { Found } from './found.js';
import { headroomTooLow } from './headroom-too-low.js';
import { heatBuildsUp } from './heat-builds-up.js';
import { leakCapsWall } from './leak-caps-wall.js';
import { listBuysTooFew } from './list-buys-too-few.js';
import { modesOnTheVoice } from './modes-on-the-voice.js';
import { moreAirNeeded } from './more-air-needed.js';
import { movingFindings } from './moving-problems.js';
import { noFreshAir } from './no-fresh-air.js';
import { panelTooHeavy } from './panel-too-heavy.js';
import { panelWidthWastesSheet } from './panel-width-wastes-sheet.js';
import { pieceBiggerThanStock } from './piece-bigger-than-stock.js';
import { quieterHoursPass } from './quieter-hours-pass.js';
import { ranked } from './ranked.js';
import { ratingHidesLowFrequency } from './rating-hides-low-frequency.js';
import { reflectionAtTheMicrophone } from './reflection-at-the-microphone.js';
import { structureBorneLowSound } from './structure-borne-low-sound.js';
import { takeTooLong } from './take-too-long.js';
import { tallerThanTheRoom } from './taller-than-the-room.js';
import { thirdLeaf } from './third-leaf.js';
import { tooNarrowToStand } from './too-narrow-to-stand.js';

/** All findings, in the order of what to change first. */
export function findingsOf(context: JudgedContext): Finding[] {
  // What a text with errors does not say of a booth may be in the part that could not be read.
  const readable = {
    ...context,
    booths: context.booths.filter(({ booth }) => boothUnread(context.spec, booth.name).length === 0),
  };
  const findings: Found[] = [
    ...boxyDecay(readable),
    ...cavityResonanceInBand(context),
    ...costOverBudget(readable),
    ...dbaPassesDbfsFails(context),
    ...fanSetsTheNoise(context),
    ...fanTooWeak(readable),
    ...heatBuildsUp(readable),
    ...listBuysTooFew(readable),
    ...movingFindings(readable),
    ...panelTooHeavy(readable),
    ...panelWidthWastesSheet(readable),
    ...pieceBiggerThanStock(readable),
    ...quieterHoursPass(context),
    ...takeTooLong(readable),
    ...fastAirInDuct(context),
    ...floorLoadOverLimit(readable),
    ...headroomTooLow(readable),
    ...leakCapsWall(readable),
    ...modesOnTheVoice(readable),
    ...moreAirNeeded(readable),
    ...noFreshAir(readable),
    ...ratingHidesLowFrequency(context),
    ...reflectionAtTheMicrophone(readable),
    ...structureBorneLowSound(context),
    ...tallerThanTheRoom(readable),
    ...thirdLeaf(context),
    ...tooNarrowToStand(readable),
  ];
  return ranked(findings, context);
}
