import type { Appliance, Booth, Vent } from '@boothwright/language';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { caution } from './caution-for.js';

/**
 * A flame near the booth. A fan that takes air out of the room of an open flue, or out of a room that is joined to it, can
 * pull the exhaust gas back in. Where the text does not say which way a fan blows, the worse way counts.
 */
export function combustion({ spec, booths }: JudgedContext): Caution[] {
  const draws = booths.map(({ booth }) => drawOf(booth));
  const flow = Math.max(0, ...draws.map((draw) => draw.flow));
  return (spec.site?.appliances ?? []).map((appliance) => {
    const isOpen = appliance.flue.value !== 'room-sealed' && appliance.where?.value !== 'elsewhere';
    const draw = isOpen ? draws.find((each) => each.how !== null) : undefined;
    const words = [
      flow > 0 ? `fan of ${decimals(flow * 1000, 1)} L/s` : null,
      draw === undefined ? null : draw.how,
      flueWords(appliance),
    ].filter((each) => each !== null);
    return caution('combustion-appliance', appliance.nameRange, {
      severity: draw === undefined ? 'caution' : 'stop',
      hazard:
        draw === undefined
          ? `Carbon monoxide from ${appliance.name}`
          : `Carbon monoxide: a fan can pull exhaust gas of ${appliance.name} back into the room`,
      number: words.join(', '),
      why: 'An open flue draws its air from the room. A fan that lowers the pressure there, even by a few pascals, can turn the draught round; carbon monoxide has no smell. Well-established practice, no figure of our own.',
      ask:
        draw === undefined
          ? 'Ask a licensed heating engineer before changing any vent near it, and fit a carbon monoxide alarm.'
          : 'Do not run the fan before a licensed heating engineer has looked at it; let the fan blow in from a room without a flame, with a free way back, instead of drawing out; fit a carbon monoxide alarm in the room and one that is heard inside the booth.',
    });
  });
}

interface Draw {
  /** m3/s of the fans */
  readonly flow: number;
  /** How the booth can lower the pressure at the flame; null where it cannot. */
  readonly how: string | null;
}

function drawOf(booth: Booth): Draw {
  const flows = booth.vents.map((vent) => vent.fan?.flow.value ?? 0);
  const flow = flows.reduce((sum, each) => sum + each, 0);
  if (flow === 0) return { flow, how: null };
  if (booth.vents.some((vent) => vent.opensTo.value === 'appliance-room')) {
    return { flow, how: 'a vent opens to the room of the appliance' };
  }
  const fans = booth.vents.filter((vent) => (vent.fan?.flow.value ?? 0) > 0);
  if (fans.some((vent) => vent.fan?.direction === undefined)) {
    return { flow, how: 'which way the fan blows is not stated' };
  }
  if (booth.vents.some((vent) => vent.opensTo.origin.kind === 'default')) {
    return { flow, how: 'where the vents open to is not stated' };
  }
  return { flow, how: takenFromRoom(booth, fans) > 0 ? 'it takes air out of the room' : null };
}

/** m3/s that the room around the booth loses to other rooms and outdoors; negative when it gains. */
function takenFromRoom(booth: Booth, fans: readonly Vent[]): number {
  const passive = booth.vents.filter((vent) => !fans.includes(vent));
  const passiveToRoom =
    passive.length === 0 ? 1 : passive.filter((vent) => vent.opensTo.value === 'room').length / passive.length;
  return fans.reduce((sum, vent) => {
    const into = (vent.fan?.direction?.value === 'supply' ? 1 : -1) * (vent.fan?.flow.value ?? 0);
    // What the fan brings into the booth leaves by the other vents, and the other way round.
    const ownShare = vent.opensTo.value === 'room' ? into : 0;
    return sum + ownShare - into * passiveToRoom;
  }, 0);
}

function flueWords(appliance: Appliance): string {
  return appliance.flue.value === 'unknown' ? 'kind of flue not stated' : `${appliance.flue.value} appliance`;
}
