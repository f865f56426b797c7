// The library's entry for Node is not loadable as an ES module; its module file is, but brings types that only a bundler
// resolves. This is the part of it that is used here.
declare module 'maxrects-packer/dist/maxrects-packer.mjs' {
  export class Rectangle<T> {
    constructor(width: number, height: number);
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    /** Whether it was turned; `width` and `height` are then those it lies in. */
    readonly rot: boolean;
    data: T;
  }

  /** One stock piece. */
  export class MaxRectsBin<T> {
    constructor(
      width: number,
      height: number,
      padding: number,
      options: {
        readonly smart: boolean;
        readonly pot: boolean;
        readonly square: boolean;
        readonly allowRotation: boolean;
      },
    );
    /** Undefined where it has no place left. */
    add(piece: Rectangle<T>): Rectangle<T> | undefined;
    readonly rects: readonly Rectangle<T>[];
  }
}
