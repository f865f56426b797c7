import type { BoothResult, Caution } from '@boothwright/assessment';
import { flowText, pressureText } from '../../numbers/air-words.js';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { limitText, valueText, verdictText } from '../../numbers/requirement-words.js';
import { ofBooth } from '../../text/section.js';
import { heatSentence } from '../../text/sections/air.js';
import { type Block, blocks, facts, figureColumn, heading, list, type ReportSection, table, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';
import { cautionsTable } from './cautions.js';
import { voiceBlocks } from './voice.js';

/** Hazards to the house and to the others in it. */
const ofTheHouse: ReadonlySet<string> = new Set([
  'combustion-appliance',
  'floor-load',
  'timber-floor',
  'tip-over',
  'electricity-and-heat',
  'fire-class-not-stated',
  'sprinklers-and-detectors',
  'alarm-not-heard',
  'moisture',
  'owner-and-insurer',
]);

/** What the owner of the house and whoever judges its floor ask: loads, fixings, voice, heat, electricity, air. */
export function landlordSection({ result }: ReportInput): ReportSection | undefined {
  const booths = Object.entries(result.booths);
  if (booths.length === 0) return undefined;
  const cautions = result.cautions.filter(({ id }: Caution) => ofTheHouse.has(id));
  const floor = result.requirements.filter(({ kind }) => kind === 'floor-load');
  return {
    id: 'house',
    title: 'For the landlord and the floor expert',
    lead: 'What the booth does to the house and its neighbours. It gives figures to those who may judge a floor, a flue or a circuit; it judges none itself.',
    blocks: blocks(
      ...booths.flatMap(([name, booth]) => {
        const suffix = ofBooth(name, booths.length);
        return [
          heading(`Mass and floor${suffix}`),
          ...loadBlocks(booth, suffix),
          list(
            floor
              .filter((each) => each.booth === null || each.booth === name)
              .map(
                (each) =>
                  `Limit stated in the text ${limitText(each)}, predicted ${valueText(each)}: ${verdictText(each)}`,
              ),
          ),
          heading(`Fixings and impact${suffix}`),
          ...fixingBlocks(booth),
          heading(`Voice outside${suffix}`),
          ...voiceBlocks(booth, suffix),
          heading(`Heat, electricity, air${suffix}`),
          ...serviceBlocks(booth, suffix),
        ];
      }),
      cautions.length > 0 && heading('Hazards to the house'),
      cautionsTable('Hazards to the house, and whom to ask', cautions),
      text(
        'Before anything is bought or fixed, show this to the owner and, where it touches floor, fire, electricity or flues, to those licensed to judge them. Local codes and the lease stand above every figure here.',
      ),
    ),
  };
}

function loadBlocks({ build, geometry }: BoothResult, suffix: string): Block[] {
  const { structure } = build;
  const size = geometry.outsideM.map((metres) => formatNumber(metres, 2)).join(' × ');
  return blocks(
    facts([
      ['Outside', `${size} m (width × depth × height), stands on ${formatFigures(build.footprintM2)} m²`],
      ['Mass', `${formatQuantity(build.massKg, 'kg')} empty, ${formatQuantity(build.loadedMassKg, 'kg')} in use`],
      [
        'Made of',
        build.massByPart
          .filter(({ kg }) => kg > 0)
          .map(({ part, kg }) => `${part} ${formatQuantity(kg, 'kg')}`)
          .join(', '),
      ],
      ['Mean load', `${formatNumber(build.floorLoadPa / 1000, 2)} kPa under the whole footprint, in use`],
      [
        'Beside it',
        structure.beside
          .map(
            ({ name, pa, ratio, source }) =>
              `${formatNumber(ratio, 1)} times the ${formatNumber(pa / 1000, 2)} kPa often quoted for ${name} (${source})`,
          )
          .join('; '),
      ],
      ['On the deck', `${formatNumber(structure.deckMassKg)} kg of deck, people, contents and boxes of air paths`],
      [
        'On each mount',
        structure.perMountN !== null &&
          `${formatNumber(structure.perMountN / 1000, 2)} kN as a mean; those at the corners bear more`,
      ],
      ['Joists', structure.joistWords],
      ['Not counted', structure.notCounted.join('; ')],
    ]),
    table(
      `Under the bottom edge of each wall${suffix}`,
      [{ head: 'wall' }, figureColumn('length, m'), figureColumn('kg'), figureColumn('kN/m'), { head: 'joists' }],
      structure.lineLoads.map(({ face, lengthM, massKg, nPerM, joists }) => [
        face,
        formatNumber(lengthM, 2),
        formatNumber(massKg),
        formatNumber(nPerM / 1000, 2),
        joists === null ? 'not said' : `${joists} the joists`,
      ]),
    ),
    text(structure.words),
  );
}

/** What shakes the house, and what is fixed to it. */
function fixingBlocks({ noise, build }: BoothResult): Block[] {
  const seams = build.panels.filter(({ tipAngleDegrees }) => tipAngleDegrees !== null);
  const lean = Math.min(...seams.map(({ tipAngleDegrees }) => tipAngleDegrees ?? 90));
  return blocks(
    list([
      'The text has no word for anchors: what is screwed, glued or drilled into the building is not in it and must be agreed with the owner.',
      seams.length > 0 &&
        `While it is put up, a wall panel that stands alone falls once it leans ${formatNumber(lean, 1)}°.`,
      noise.mounts === null
        ? 'No springs are stated under the booth: steps, knocks and loudspeakers inside reach the floor as they are.'
        : `Springs: ${noise.mounts.text}`,
      ...noise.notPredicted
        .filter(({ kind }) => kind !== 'unknown-power')
        .map(({ name, why }) => `Not predicted, ${name}: ${why}`),
    ]),
  );
}

function serviceBlocks({ air, ventilation }: BoothResult, suffix: string): Block[] {
  const flow = ventilation.high ?? ventilation.low;
  return blocks(
    facts([
      ['Heat', air && (heatSentence(air)?.replace(/^Heat: /, '') ?? air.heatNote)],
      [
        'Electricity',
        air?.heat
          ? `${formatNumber(air.heat.equipmentW)} W of equipment end as heat inside; circuits, cables and their passage through the wall are not in the text`
          : 'what is plugged in inside is not in the text as heat; circuits, cables and their passage through the wall are not in it',
      ],
      [
        'Air drawn',
        flow?.flowM3PerS
          ? `${flowText(flow.flowM3PerS)} at full speed${flow.boothPressurePa === null ? '' : `, the booth at ${formatNumber(flow.boothPressurePa, 1)} Pa against the room`}`
          : 'no flow by a fan is known',
      ],
      ['Way of the air', ventilation.wayNote],
    ]),
    table(
      `Vents${suffix} and where they open`,
      [{ head: 'vent' }, { head: 'air' }, { head: 'opens to' }, figureColumn('flow, high'), figureColumn('takes')],
      ventilation.vents.map(({ name, direction, directionStated, opensTo, flowHighM3PerS, pressure }) => [
        name,
        direction === null ? 'not said' : `${direction}${directionStated ? '' : ', assumed'}`,
        opensTo.replaceAll('-', ' '),
        flowHighM3PerS === null ? '–' : flowText(flowHighM3PerS),
        pressure.length === 0 ? '–' : pressureText(pressure.reduce((sum, { pa }) => sum + pa, 0)),
      ]),
    ),
    text(
      'A fan that draws air out of a room with a boiler, stove or fire can draw its exhaust gas in: whoever is licensed for the appliance must know of the booth.',
    ),
  );
}
