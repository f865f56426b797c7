/**
 * Figures of common practice behind moving and putting up. None is a rule: backs, hands and rooms differ. Each is listed
 * among the defaults of a result that uses it.
 */

/** m to spare below which a panel is told to go only just: a tape measure errs by 5 mm at each end, hands need the rest. */
export const comfort = 0.02;

/** m between booth and wall of the room in which somebody can work from outside; 0.60 m is comfortable. */
export const workingGap = 0.45;
export const comfortableGap = 0.6;

/** m above the top of the booth to lift a roof on with hands under it; 80 to 100 mm are usual, the larger is taken. */
export const liftGrip = 0.1;

/** m of play over a roof that slides on. */
export const slidePlay = 0.02;

/** m; from this length two people carry a panel whatever it weighs, as they do a full sheet. */
export const sheetLength = 1.2;

/** m; what hangs higher is walked under. */
export const walkUnder = 1.8;
