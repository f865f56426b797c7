import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import {
  budgetHover,
  floorHover,
  heatHover,
  massHover,
  microphoneHover,
  panelsHover,
  placeHover,
  requirementReasons,
  requirementVerdict,
  roomSoundHover,
  sessionAirHover,
  voiceHover,
} from '@boothwright/presentation';
import type { View } from '../view.js';
import { ifStale } from './if-stale.js';

/**
 * The verdict on a requirement, and what it rests on. An editor shows the diagnostic of a requirement that is not met
 * above the hover; it has the explanation already.
 */
export function requirementSection(view: View, requirement: RequirementResult): string {
  const reasons = requirementReasons(requirement.verdict === 'met' ? requirement : { ...requirement, explanation: '' });
  const parts = [requirementVerdict(requirement), ...grounds(view, requirement), reasons];
  return ifStale(view, parts.filter((part) => part !== '').join('\n\n---\n\n'));
}

type Ground = (name: string, booth: BoothResult, requirements: readonly RequirementResult[]) => string | undefined;

const byKind: Readonly<Record<string, Ground>> = {
  'room-tone': microphoneHover,
  reverberation: roomSoundHover,
  'decay-ratio': roomSoundHover,
  'voice-outside': voiceHover,
  co2: sessionAirHover,
  'temperature-rise': heatHover,
  'floor-load': floorHover,
  mass: massHover,
  'panel-weight': panelsHover,
  height: placeHover,
  cost: budgetHover,
};

function grounds({ results }: View, requirement: RequirementResult): string[] {
  const ground = byKind[requirement.kind];
  if (ground === undefined || results === undefined) return [];
  return Object.entries(results.booths)
    .filter(([name]) => requirement.booth === null || requirement.booth === name)
    .flatMap(([name, booth]) => ground(name, booth, results.requirements) ?? []);
}
