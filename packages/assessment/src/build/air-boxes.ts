import type { AssemblyLayer, Booth, Chamber, MaterialLayer, Vent } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';
import type { PieceUse } from '../result/parts-result.js';
import type { AreaUse } from './area-uses.js';
import type { Piece } from './piece.js';

/** A box or maze in an air path as something to build. */
export interface AirBox {
  /** `box of intake`, `box 2 of intake`, `maze of intake` */
  readonly owner: string;
  /** Its boards, cut to size; empty where no board is known, and for a maze. */
  readonly pieces: readonly Piece[];
  /** Boards of a maze, whose folding the text does not say, by their area: a lower bound. */
  readonly boards: readonly AreaUse[];
  readonly board: MaterialLayer | undefined;
  /** True where the board is that of the face, because the text says none. */
  readonly assumed: boolean;
}

/**
 * The boxes on the way of the air. A box has two covers over everything, two sides between them over the ends, and two ends
 * with a hole for the duct, so that its inside is what the text says. Of a maze only the way of the air is known: its covers
 * along that way, a wall on either side of it that neighbouring legs share, and an end.
 */
export function airBoxes(booth: Booth): AirBox[] {
  return booth.vents.flatMap((vent) => {
    const standIn = boardOf(booth.faces[vent.face]?.assembly.layers ?? []);
    const chambers = vent.chambers.map((chamber, index): AirBox => {
      const board = chamber.board ?? standIn;
      return {
        owner: `box ${vent.chambers.length > 1 ? `${index + 1} ` : ''}of ${vent.name}`,
        pieces: board === undefined ? [] : chamberPieces(chamber, board, ductArea(vent)),
        boards: [],
        board,
        assumed: chamber.board === undefined,
      };
    });
    const { maze } = vent;
    if (maze === undefined) return chambers;
    const board = maze.board ?? standIn;
    const owner = `maze of ${vent.name}`;
    const boards = board === undefined ? [] : [boardUse(owner, board, mazeBoardArea(maze))];
    return [...chambers, { owner, pieces: [], boards, board, assumed: maze.board === undefined }];
  });
}

/** The outermost board of a build-up. */
function boardOf(layers: readonly AssemblyLayer[]): MaterialLayer | undefined {
  return layers.find(
    (layer): layer is MaterialLayer =>
      layer.kind === 'material' && layer.material.kind === 'panel' && (layer.thickness?.value ?? 0) > 0,
  );
}

function chamberPieces({ size }: Chamber, board: MaterialLayer, hole: number): Piece[] {
  const [long, broad, low] = [size.width.value, size.depth.value, size.height.value].sort((a, b) => b - a) as [
    number,
    number,
    number,
  ];
  const thickness = board.thickness?.value ?? 0;
  const pair = (use: PieceUse, widthM: number, lengthM: number, cutOutM2 = 0): Piece[] => {
    const piece: Piece = {
      use,
      material: board.material,
      form: 'sheet',
      widthM,
      lengthM,
      thicknessM: thickness,
      massKg: board.surfaceMass.value * (widthM * lengthM - cutOutM2),
      cutOutM2,
      layer: 0,
    };
    return [piece, piece];
  };
  return [
    ...pair('cover', broad + 2 * thickness, long + 2 * thickness),
    ...pair('side', low, long + 2 * thickness),
    ...pair('end', low, broad, Math.min(hole, low * broad)),
  ];
}

/** m2: (turns + 1) legs, covers above and below, a wall between neighbouring legs and outside the first and last, two ends. */
function mazeBoardArea({ turns, leg, channel }: NonNullable<Vent['maze']>): number {
  const legs = turns.value + 1;
  const { width, height } = channel;
  return 2 * legs * leg.value * width.value + (legs + 1) * leg.value * height.value + 2 * width.value * height.value;
}

function boardUse(owner: string, board: MaterialLayer, amount: number): AreaUse {
  return {
    owner,
    material: board.material,
    form: 'sheet',
    amount,
    thicknessM: board.thickness?.value ?? board.material.thickness?.value,
    widthM: 0,
    massKg: board.surfaceMass.value * amount,
  };
}
