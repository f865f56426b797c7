/**
 * A reflection stronger than this re the direct sound is told of, dB: it makes ripples of +1.4 and -1.7 dB. Evidence: common
 * practice of control rooms, where early reflections are kept 10 to 20 dB down; the value is the project's own.
 */
export const strongReflection = -15;

/** Reflections this much below the direct sound move no frequency by more than a tenth of a decibel and are not listed, dB. */
export const weakReflection = -40;

/** Later than this after the direct sound a reflection counts as reverberation, s. Evidence: common practice. */
export const earlyTime = 0.01;

/** Sides of the range over which absorption and finite size of a reflector are averaged, Hz: where speech is understood. */
export const speechRange = [500, 2000] as const;

/** Octaves of that range. */
export const speechOctaves = [500, 1000, 2000] as const;

/** Share that a cover of 50 mm of fibre takes in that range. Evidence: common practice, 0.7 to 0.95. */
export const coverAbsorption = 0.8;

/** Head and microphone stay this far from every wall where other places are tried, m. Evidence: common practice. */
export const leastFromWall = 0.25;

/** Places tried along the width and along the depth. */
export const placesPerSide = 5;

/** Range over which the ups and downs of a place are judged, Hz: the fundamental of voices and its first overtones. */
export const placeRange = [60, 300] as const;

/** A place is worth moving to from this on, dB. The project's own. */
export const worthMoving = 1;

/** Degrees by which a holder or screen is tried to be leant further, either way. */
export const tiltsTried = [10, 20, 30, 40, 50] as const;
