/** What a hover needs beside the result itself. */
export interface HoverContext {
  /** Band centres of every `byBand` array. */
  readonly nominalHz: readonly number[];
  /** Address of the page that explains a model, when there is one. */
  readonly modelPage?: (model: string) => string | undefined;
}
