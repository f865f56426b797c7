import type { TextRange } from './result-values.js';

/** What a piece does. */
export type PieceUse =
  | 'sheet'
  | 'fill'
  | 'stud'
  | 'post'
  | 'plate'
  | 'header'
  | 'sill'
  | 'short stud'
  | 'cover'
  | 'side'
  | 'end';

/** A row of the cut list: pieces of one size for one panel, door or window. */
export interface PartResult {
  /** `7b`: panel 7, second kind of piece; doors start with `D`, windows with `W`, boxes in air paths with `B`. */
  readonly mark: string;
  /** `panel 7, back 2`, `door entry`, `window view`, `box of intake`. */
  readonly owner: string;
  /** Number of the panel; null for doors, windows and boxes. */
  readonly panel: number | null;
  readonly use: PieceUse;
  readonly material: string;
  /** Name of what it is cut from, the `name` of a row of `stock`. */
  readonly stock: string;
  readonly form: 'sheet' | 'stick' | 'soft';
  readonly count: number;
  /** Of a stick: the width of its section along the wall. */
  readonly widthM: number;
  /** Upwards in a wall; of a stick its length. */
  readonly lengthM: number;
  /** Of a stick: the depth of its section; null for what is known by its mass alone. */
  readonly thicknessM: number | null;
  /** m2 cut out of each for a door or window. */
  readonly cutOutM2: number;
  /** Of one; null when the material has no density. */
  readonly massKg: number | null;
}

/** Where one piece lies on a sheet, from the sheet's lower left corner; sizes as it lies. */
export interface PlacedPart {
  readonly mark: string;
  readonly xM: number;
  readonly yM: number;
  readonly widthM: number;
  readonly heightM: number;
  readonly turned: boolean;
}

/** How pieces are cut out of sheets of one kind. */
export interface SheetLayout {
  readonly stock: string;
  readonly sheetWidthM: number;
  readonly sheetHeightM: number;
  /** True when the text gives no size and the named default stands in. */
  readonly assumedSize: boolean;
  readonly kerfM: number;
  readonly sheets: readonly {
    readonly parts: readonly PlacedPart[];
    readonly usedM2: number;
    /** True when cuts from edge to edge, one after the other, free every piece. */
    readonly edgeToEdge: boolean;
  }[];
  /** No layout needs fewer: area of the pieces over that of a sheet, rounded up. */
  readonly leastSheets: number;
  /** Share of the bought area that becomes no piece, 0..1. */
  readonly wasteShare: number;
  /** Pieces that no sheet of this size yields. */
  readonly tooBig: readonly {
    readonly mark: string;
    readonly owner: string;
    readonly widthM: number;
    readonly lengthM: number;
  }[];
  /** Why nothing was laid out; null when it was. */
  readonly why: string | null;
}

/** How sticks are cut off lengths of one kind. */
export interface LengthLayout {
  readonly stock: string;
  readonly stockLengthM: number;
  readonly assumedLength: boolean;
  readonly kerfM: number;
  /** Equal cuts stand together: `count` lengths, each cut into `cuts`. */
  readonly patterns: readonly { readonly count: number; readonly cutsM: readonly number[]; readonly offcutM: number }[];
  readonly lengths: number;
  readonly leastLengths: number;
  readonly wasteShare: number;
  readonly tooLong: readonly { readonly mark: string; readonly owner: string; readonly lengthM: number }[];
  readonly why: string | null;
}

/** Something to buy. */
export interface StockResult {
  /** `softwood-plywood 12 mm`, `softwood 45 x 70 mm`. */
  readonly name: string;
  readonly material: string;
  readonly title: string | null;
  readonly form: 'sheet' | 'stick' | 'soft';
  readonly unit: 'sheet' | 'length' | 'm2' | 'm';
  /** How much to buy, in `unit`; a lower bound where `atLeast`. */
  readonly quantity: number;
  /** True when the pieces are not laid out, so that offcuts are not in the figure. */
  readonly atLeast: boolean;
  /** m2, or m of sticks, that become pieces. */
  readonly net: number;
  /** 0..1; null where nothing is laid out. */
  readonly wasteShare: number | null;
  readonly massKg: number | null;
  /** From the budget's item for it, else from the material; null when neither says it. */
  readonly price: {
    readonly amount: number;
    readonly currency: string;
    readonly per: string;
    readonly from: 'item' | 'material';
  } | null;
  readonly cost: { readonly amount: number; readonly currency: string } | null;
  /** What the budget buys of it, in `unit`; null when no item says that it is for it. */
  readonly bought: number | null;
  /** bought - quantity; negative is too few. */
  readonly spare: number | null;
  readonly items: readonly string[];
}

/** An item of the budget that says what it buys, held against what the parts need. */
export interface ItemCheck {
  readonly items: readonly string[];
  readonly range: TextRange;
  readonly material: string;
  readonly unit: string;
  readonly bought: number;
  readonly needed: number;
  readonly atLeast: boolean;
  readonly verdict: 'enough' | 'too-few' | 'too-many' | 'unused';
}

/** Bought by the piece or metre and not cut; in no sum but where the budget lists it. */
export interface FittingResult {
  readonly what: 'duct' | 'grille' | 'fan' | 'door hardware' | 'equipment' | 'mount' | 'latch';
  /** `flexible duct 125 mm`, `grille 250 x 150 mm`. */
  readonly name: string;
  /** The vent, door, thing or booth that it belongs to. */
  readonly owner: string;
  readonly unit: 'piece' | 'm';
  readonly quantity: number;
  readonly atLeast: boolean;
  /** Of one; null when nothing is said. */
  readonly massKg: number | null;
}

export interface Money {
  readonly currency: string;
  readonly amount: number;
}

export interface ShoppingResult {
  readonly stock: readonly StockResult[];
  readonly checks: readonly ItemCheck[];
  /** The counted materials at their prices and all other items of the budget as typed; one sum per currency, never added. */
  readonly counted: readonly (Money & { readonly withReserve: number })[];
  /** The budget as typed, per currency. */
  readonly typed: readonly (Money & { readonly withReserve: number })[];
  /** Where the money of the budget goes, the largest first. */
  readonly groups: readonly {
    readonly name: string;
    readonly currency: string;
    readonly amount: number;
    readonly share: number;
  }[];
  /** Rows of `stock` without a price: they are in no sum. */
  readonly withoutPrice: readonly string[];
  readonly leavesOut: readonly string[];
}

/** Joints and seams by the metre. */
export interface SealResult {
  readonly place: string;
  readonly kind: 'compression gasket' | 'door gasket' | 'threshold seal' | 'glazing tape' | 'sealant';
  readonly metres: number;
  readonly pieces: number;
  readonly fixed: boolean;
}

export interface SealingResult {
  readonly seams: readonly SealResult[];
  readonly totals: readonly { readonly kind: SealResult['kind']; readonly metres: number }[];
  readonly missing: readonly string[];
}

/** What presses where. Nothing here is a check of a floor. */
export interface StructureResult {
  readonly patchPa: number;
  /** Often-quoted uniform design loads of homes beside it. */
  readonly beside: readonly {
    readonly name: string;
    readonly pa: number;
    readonly ratio: number;
    readonly source: string;
  }[];
  /** Under the bottom edge of each wall: its own mass, doors, lining and its share of the roof. */
  readonly lineLoads: readonly {
    readonly face: string;
    readonly lengthM: number;
    readonly massKg: number;
    readonly nPerM: number;
    /** Relative to the joists, in the place the text gives; null when it does not say which way they run. */
    readonly joists: 'along' | 'across' | null;
  }[];
  /** Deck, people and contents, which stand on the deck, kg. */
  readonly deckMassKg: number;
  readonly perMountN: number | null;
  readonly joistWords: string | null;
  readonly notCounted: readonly string[];
  readonly words: string;
}
