import type { RequirementResult, ResultDocument } from '@boothwright/assessment';
import type { Problem } from '@boothwright/language';
import { ofBooth } from './section.js';
import { airSection } from './sections/air.js';
import { allowancesSection } from './sections/allowances.js';
import { assembliesSection } from './sections/assemblies.js';
import { defaultsSection, leavesOutSection } from './sections/assumptions.js';
import { buildSection } from './sections/build.js';
import { cautionsSection, deadlySection, stopSection } from './sections/cautions.js';
import { changeFirstSection } from './sections/change-first.js';
import { findingsSection } from './sections/findings.js';
import { getsInSection } from './sections/gets-in.js';
import { getsOutSection } from './sections/gets-out.js';
import { headlineSection } from './sections/headline.js';
import { inShortSection } from './sections/in-short.js';
import { moreSection } from './sections/more.js';
import { movingSection } from './sections/moving.js';
import { reflectionsSection } from './sections/reflections.js';
import { requirementsSection } from './sections/requirements.js';
import { roomToneSection } from './sections/room-tone.js';
import { soundInsideSection } from './sections/sound-inside.js';
import { variantsSection } from './sections/variants.js';
import type { TextStyle } from './text-style.js';

/**
 * The whole result as text, the verdict first, then what fails and what to change, then the figures behind it.
 * `variant` names the variant that stands in place of the base. `problems` are only counted here; `renderProblems` prints them.
 */
export function renderCheckText(
  result: ResultDocument,
  problems: readonly Problem[],
  style: TextStyle,
  variant?: string,
): string {
  const count = Object.keys(result.booths).length;
  const sections = [
    headlineSection(result, problems, style, variant),
    inShortSection(result, style),
    requirementsSection(result, style),
    stopSection(result, style),
    deadlySection(result, style),
    changeFirstSection(result, style),
    variantsSection(result, style),
    ...Object.entries(result.booths).flatMap(([name, booth]) => {
      const suffix = ofBooth(name, count);
      return [
        getsInSection(name, booth, result, style),
        roomToneSection(booth, askedOfRecording(result, name), suffix, style),
        getsOutSection(booth, suffix, style),
        soundInsideSection(booth, suffix, style),
        reflectionsSection(booth, suffix, style),
        airSection(booth, suffix, style),
        buildSection(booth, suffix, style),
        movingSection(booth, suffix, style),
      ];
    }),
    style.detail === 'full' && assembliesSection(result, style),
    findingsSection(result, style),
    cautionsSection(result, style),
    allowancesSection(result, style),
    defaultsSection(result, style),
    leavesOutSection(result, style),
    moreSection(style),
  ];
  return `${sections.filter(Boolean).join('\n\n')}\n`;
}

/** Requirements on the room tone in the file, which is read without weighting. */
function askedOfRecording({ requirements }: ResultDocument, booth: string): readonly RequirementResult[] {
  return requirements.filter(
    (requirement) => requirement.kind === 'room-tone' && requirement.unit === 'dBFS' && requirement.booth === booth,
  );
}
