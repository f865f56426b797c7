/** Standard gravity, m/s2. */
export const gravity = 9.80665;
