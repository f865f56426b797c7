import type { Requirement, Session } from '@boothwright/language';
import { assessAssembly } from '../assembly/assess-assembly.js';
import type { AssessmentContext } from '../assessment-context.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { assemblyOutOfBounds } from '../bounds/assembly-bounds.js';
import type { RequirementResult } from '../result/result-document.js';
import { isAskedOf } from './asked-of.js';
import { judgeFloorLoad, judgeHeight, judgeMass, judgePanelWeight } from './build.js';
import { judgeCo2 } from './co2.js';
import { judgeCost } from './cost.js';
import { judgeDecayRatio } from './decay-ratio.js';
import { judgeIsolation } from './isolation.js';
import { judgeRating } from './rating.js';
import { judgeReverberation } from './reverberation.js';
import { judgeRoomTone } from './room-tone.js';
import { judgeTemperatureRise } from './temperature-rise.js';
import { unlessUnread } from './unless-unread.js';
import { notAssessed } from './verdict.js';
import { judgeVoiceOutside } from './voice-outside.js';

/** One verdict per requirement and booth, in the order of the text. */
export function judgeRequirements(context: AssessmentContext): RequirementResult[] {
  return context.spec.requirements.flatMap((requirement) =>
    judge(requirement, context).map((result) => unlessUnread(result, requirement, context.spec)),
  );
}

function judge(requirement: Requirement, context: AssessmentContext): RequirementResult[] {
  if (requirement.kind === 'cost') return [judgeCost(requirement, context.spec, context.booths, context.refused)];
  if (requirement.kind === 'rating') {
    const { assembly } = requirement;
    const refused = assemblyOutOfBounds(assembly.name, assembly.layers);
    if (refused !== null) {
      const unit = requirement.rating === 'stc' ? 'STC' : 'dB';
      return [notAssessed({ requirement, limit: requirement.limit.value, unit, explanation: sentence(refused) })];
    }
    const result = context.assemblies[assembly.name] ?? assessAssembly(assembly, context.air, context.memo);
    return [judgeRating(requirement, result)];
  }
  const asked = context.spec.booths.filter(({ name }) => isAskedOf(requirement, name));
  if (asked.length === 0) {
    const { booth } = requirement;
    const explanation =
      booth === undefined
        ? 'The text has no booth yet, so there is nothing to judge.'
        : `What ${booth} is could not be read, so there is nothing to judge.`;
    return [
      notAssessed({ requirement, ...(booth === undefined ? {} : { booth }), ...limitOf(requirement), explanation }),
    ];
  }
  return asked.map(({ name }) => {
    const assessed = context.booths.find(({ booth }) => booth.name === name);
    if (assessed !== undefined) return judgeBooth(requirement, assessed, context.spec.session);
    const explanation = sentence(context.refused.get(name) ?? `${name} could not be assessed`);
    return notAssessed({ requirement, booth: name, ...limitOf(requirement), explanation });
  });
}

function sentence(reason: string): string {
  return `${reason.charAt(0).toUpperCase()}${reason.slice(1)}.`;
}

type BoothRequirement = Exclude<Requirement, { kind: 'cost' } | { kind: 'rating' }>;

function judgeBooth(
  requirement: BoothRequirement,
  booth: AssessedBooth,
  session: Session | undefined,
): RequirementResult {
  switch (requirement.kind) {
    case 'room-tone':
      return judgeRoomTone(requirement, booth, session);
    case 'isolation':
      return judgeIsolation(requirement, booth);
    case 'voice-outside':
      return judgeVoiceOutside(requirement, booth);
    case 'reverberation':
      return judgeReverberation(requirement, booth);
    case 'co2':
      return judgeCo2(requirement, booth);
    case 'mass':
      return judgeMass(requirement, booth);
    case 'floor-load':
      return judgeFloorLoad(requirement, booth);
    case 'panel-weight':
      return judgePanelWeight(requirement, booth);
    case 'height':
      return judgeHeight(requirement, booth);
    case 'temperature-rise':
      return judgeTemperatureRise(requirement, booth);
    case 'decay-ratio':
      return judgeDecayRatio(requirement, booth);
  }
}

function limitOf(requirement: BoothRequirement): { limit: number; unit: string } {
  switch (requirement.kind) {
    case 'room-tone':
    case 'isolation':
    case 'voice-outside': {
      const { decibels, weighting } = requirement.limit.value;
      const units = { A: 'dBA', C: 'dBC', Z: 'dB', none: 'dB', FS: 'dBFS', NC: 'NC' } as const;
      return { limit: decibels, unit: requirement.kind === 'isolation' ? 'dB' : units[weighting] };
    }
    case 'reverberation':
      return { limit: requirement.max.value, unit: 's' };
    case 'co2':
      return { limit: requirement.limit.value, unit: 'ppm' };
    case 'mass':
    case 'panel-weight':
      return { limit: requirement.limit.value, unit: 'kg' };
    case 'floor-load':
      return { limit: requirement.limit.value / 1000, unit: 'kPa' };
    case 'height':
      return { limit: requirement.limit.value, unit: 'm' };
    case 'temperature-rise':
      return { limit: requirement.limit.value, unit: 'K' };
    case 'decay-ratio':
      return { limit: requirement.limit.value, unit: '' };
  }
}
