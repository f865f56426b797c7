/**
 * Uniform design loads that are often met in homes, kPa. 1.44 (30 psf) for bedrooms and 1.92 (40 psf) for other rooms
 * are quoted from discussions of North American codes, 1.5 for homes elsewhere from secondary pages; none was read in a
 * code. They are for comparison only.
 */
export const genericDesignLoads = { bedroom: 1.44, homes: 1.5, otherRooms: 1.92 } as const;
