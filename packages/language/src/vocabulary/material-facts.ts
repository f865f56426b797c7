import { bands, choice, optional, quantity, size2, text } from './parts.js';
import type { Block, Fact, Part } from './shape.js';
import { EVIDENCE_WORDS, MATERIAL_KINDS } from './words.js';

function figure(
  keyword: string,
  parts: readonly Part[],
  example: string,
  documentation: string,
  fallback?: string,
): Fact {
  return {
    keyword,
    parts,
    sourced: true,
    example,
    documentation,
    ...(fallback === undefined ? {} : { default: fallback }),
  };
}

export const materialBlock: Block = {
  name: 'material',
  documentation: 'What a layer is made of: its kind and its figures, each with where it comes from.',
  facts: [
    {
      keyword: 'kind',
      parts: [choice('value', ...MATERIAL_KINDS)],
      required: true,
      example: 'kind porous',
      documentation:
        'How the material behaves: `panel` is a stiff board, `limp` a heavy sheet without stiffness, `porous` fibre or open foam, `cloth` a thin sheet that air passes, `covering` a floor covering or mat, `lumber` the stock of frames, of wood or folded steel.',
    },
    figure('density', [quantity('value', 'density')], 'density 860 kg/m3', 'Mass per volume.'),
    figure(
      'surface-mass',
      [quantity('value', 'mass-per-area')],
      'surface-mass 4.9 kg/m2',
      'Mass per area, for what is sold by the square metre.',
    ),
    figure(
      'thickness',
      [quantity('value', 'length')],
      'thickness 2 mm',
      'For a material that comes in one thickness; a layer may then leave it out.',
    ),
    figure(
      'modulus',
      [quantity('value', 'pressure')],
      'modulus 2.1 GPa',
      'Young’s modulus of a panel; with density and thickness it fixes where the panel lets sound through by bending along with it.',
    ),
    figure(
      'modulus-across',
      [quantity('value', 'pressure')],
      'modulus-across 0.5 GPa',
      'Young’s modulus across the grain of solid wood or plywood, `modulus` being that along it; without it a panel is as stiff in every direction.',
    ),
    figure(
      'shear-modulus',
      [quantity('value', 'pressure')],
      'shear-modulus 0.7 GPa',
      'Shear modulus of a panel through its thickness; without it that of a material which is the same in every direction. Low in wood and in boards with a soft core.',
    ),
    figure('poisson', [quantity('value', 'count')], 'poisson 0.3', 'Poisson’s ratio of a panel.', 'poisson'),
    figure(
      'loss-factor',
      [quantity('value', 'count')],
      'loss-factor 0.05',
      'Share of the bending energy a fixed panel loses per radian, edges included.',
      'loss-factor',
    ),
    figure(
      'resistivity',
      [quantity('value', 'resistivity')],
      'resistivity 12 kPa.s/m2',
      'Flow resistivity of a porous material: what it sets against air per metre of depth.',
    ),
    figure(
      'flow-resistance',
      [quantity('value', 'flow-resistance')],
      'flow-resistance 200 Pa.s/m',
      'Flow resistance of a cloth, for its whole thickness.',
    ),
    figure(
      'absorption',
      [bands('value', 'count')],
      'absorption octave 125 Hz 0.02, 250 Hz 0.03',
      'Measured absorption coefficient by band; a band left out is unknown, never zero.',
    ),
    figure(
      'price',
      [{ kind: 'price', slot: 'value', per: true }],
      'price 7.50 EUR per m2',
      'What it costs, per m2, m, m3, kg, sheet or piece.',
    ),
    figure('sheet', [size2], 'sheet 1.22 m x 2.44 m', 'Width x height of the sheet it is sold in.'),
    figure('stock', [quantity('value', 'length')], 'stock 2.4 m', 'Length it is sold in: lumber, strips, rolls.'),
    figure(
      'gauge',
      [quantity('value', 'length')],
      'gauge 0.5 mm',
      'Thickness of the sheet that a light steel stud is folded from; its `density` is that of steel. Lumber without it is solid.',
    ),
    figure(
      'stud-stiffness',
      [quantity('value', 'pressure')],
      'stud-stiffness 1.5 MPa',
      'How hard a resilient stud is to press together: force per metre of it over how far its faces come closer. Timber counts as rigid; studs with a gauge yield as their flanges do.',
    ),
    figure(
      'fire-class',
      [text('value')],
      'fire-class "B-s1,d0"',
      'Reaction-to-fire class as the data sheet prints it.',
    ),
    {
      keyword: 'source',
      parts: [optional(choice('evidence', ...Object.keys(EVIDENCE_WORDS))), text('value')],
      example: 'source data-sheet "supplier, 2025"',
      documentation: 'Where the figures come from, for every fact that has no `from` of its own.',
    },
  ],
};
