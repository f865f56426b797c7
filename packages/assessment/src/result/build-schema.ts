import { boolean, list, nullable, number, record, ref, string } from './schema-parts.js';

const integer = { type: 'integer' } as const;
const money = record({ currency: string, amount: number });
const moneyWithReserve = record({ currency: string, amount: number, withReserve: number });
const forms = { enum: ['sheet', 'stick', 'soft'] } as const;

const panel = record({
  number: integer,
  name: string,
  face: { enum: ['front', 'back', 'left', 'right', 'roof', 'floor'] },
  leaf: { enum: ['whole', 'outer', 'inner'] },
  widthM: number,
  heightM: { type: 'number', description: 'For roof and floor the span.' },
  thicknessM: number,
  massKg: { type: 'number', description: 'Without lining, door leaf and pane.' },
  massMissing: { ...list(string), description: 'Materials without a density.' },
  openings: list(
    record({
      kind: { enum: ['door', 'window'] },
      name: string,
      offsetM: number,
      baseM: number,
      widthM: number,
      heightM: number,
    }),
  ),
  offsetM: { type: 'number', description: 'From the left edge of the face as seen from outside.' },
  baseM: { type: 'number', description: 'Above the floor of the building.' },
  box: record({ xM: number, yM: number, zM: number, widthM: number, depthM: number, heightM: number }),
  centreOfGravityM: record({ height: number, fromOutside: number }),
  tipAngleDegrees: nullable(number),
  heaviestLeafKg: nullable(number),
});

const part = record({
  mark: string,
  owner: string,
  panel: nullable(integer),
  use: { enum: ['sheet', 'fill', 'stud', 'post', 'plate', 'header', 'sill', 'short stud', 'cover', 'side', 'end'] },
  material: string,
  stock: string,
  form: forms,
  count: integer,
  widthM: number,
  lengthM: number,
  thicknessM: nullable(number),
  cutOutM2: number,
  massKg: nullable(number),
});

const sheetLayout = record({
  stock: string,
  sheetWidthM: number,
  sheetHeightM: number,
  assumedSize: boolean,
  kerfM: number,
  sheets: list(
    record({
      parts: list(record({ mark: string, xM: number, yM: number, widthM: number, heightM: number, turned: boolean })),
      usedM2: number,
      edgeToEdge: { type: 'boolean', description: 'Cuts from edge to edge free every piece.' },
    }),
  ),
  leastSheets: { type: 'integer', description: 'No layout needs fewer.' },
  wasteShare: number,
  tooBig: list(record({ mark: string, owner: string, widthM: number, lengthM: number })),
  why: nullable(string),
});

const lengthLayout = record({
  stock: string,
  stockLengthM: number,
  assumedLength: boolean,
  kerfM: number,
  patterns: list(record({ count: integer, cutsM: list(number), offcutM: number })),
  lengths: integer,
  leastLengths: { type: 'integer', description: 'No cutting needs fewer.' },
  wasteShare: number,
  tooLong: list(record({ mark: string, owner: string, lengthM: number })),
  why: nullable(string),
});

const stock = record({
  name: string,
  material: string,
  title: nullable(string),
  form: forms,
  unit: { enum: ['sheet', 'length', 'm2', 'm'] },
  quantity: number,
  atLeast: { type: 'boolean', description: 'Offcuts are not in the quantity.' },
  net: number,
  wasteShare: nullable(number),
  massKg: nullable(number),
  price: nullable(record({ amount: number, currency: string, per: string, from: { enum: ['item', 'material'] } })),
  cost: nullable(money),
  bought: nullable(number),
  spare: { ...nullable(number), description: 'Negative is too few.' },
  items: list(string),
});

const shopping = record({
  stock: list(stock),
  checks: list(
    record({
      items: list(string),
      range: ref('range'),
      material: string,
      unit: string,
      bought: number,
      needed: number,
      atLeast: boolean,
      verdict: { enum: ['enough', 'too-few', 'too-many', 'unused'] },
    }),
  ),
  counted: list(moneyWithReserve),
  typed: list(moneyWithReserve),
  groups: list(record({ name: string, currency: string, amount: number, share: number })),
  withoutPrice: list(string),
  leavesOut: list(string),
});

const fitting = record({
  what: { enum: ['duct', 'grille', 'fan', 'door hardware', 'equipment', 'mount', 'latch'] },
  name: string,
  owner: string,
  unit: { enum: ['piece', 'm'] },
  quantity: number,
  atLeast: boolean,
  massKg: nullable(number),
});

const seals = { enum: ['compression gasket', 'door gasket', 'threshold seal', 'glazing tape', 'sealant'] } as const;

const sealing = record({
  seams: list(record({ place: string, kind: seals, metres: number, pieces: integer, fixed: boolean })),
  totals: list(record({ kind: seals, metres: number })),
  missing: list(string),
});

const structure = record(
  {
    patchPa: number,
    beside: list(record({ name: string, pa: number, ratio: number, source: string })),
    lineLoads: list(
      record({
        face: string,
        lengthM: number,
        massKg: number,
        nPerM: number,
        joists: { enum: ['along', 'across', null] },
      }),
    ),
    deckMassKg: number,
    perMountN: nullable(number),
    joistWords: nullable(string),
    notCounted: list(string),
    words: string,
  },
  'Loads to show to a qualified person; not a check of a floor.',
);

/** What the booth is made of and what it weighs. */
export const buildSchema = record({
  massKg: number,
  massByPart: list(record({ part: string, kg: number })),
  loadedMassKg: number,
  floorLoadPa: number,
  footprintM2: number,
  cost: nullable(
    record({ amount: number, currency: string, withReserve: number, missing: number, unpriced: list(string) }),
  ),
  panels: list(panel),
  panelsWhy: { ...nullable(string), description: 'Why there are no panels.' },
  panelNotes: list(string),
  heaviestPanel: nullable(integer),
  parts: list(part),
  sheetLayouts: list(sheetLayout),
  lengthLayouts: list(lengthLayout),
  fittings: { ...list(fitting), description: 'Bought by the piece or metre; priced nowhere but in the budget.' },
  shopping,
  sealing,
  structure,
});
