declare const quantity: unique symbol;

/** Values by band, dB, of one quantity. Two quantities are not assignable to each other. */
export type BandSpectrum<Quantity extends string> = readonly number[] & { readonly [quantity]: Quantity };
