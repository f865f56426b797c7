/** Heat of a person, W: what warms the air, and what leaves as water vapour. */
export type OccupantHeat = { readonly sensible: number; readonly latent: number };

/**
 * Heat that one person gives off, by what the person does.
 * Source: ASHRAE Handbook, Fundamentals, nonresidential cooling loads, Table 1 (from memory; not opened).
 * Valid: rooms of about 24 degC; the warmer the room, the more of it is latent.
 */
export const occupantHeat: Readonly<Record<'seated at rest' | 'seated at light work' | 'office work', OccupantHeat>> = {
  'seated at rest': { sensible: 65, latent: 30 },
  'seated at light work': { sensible: 70, latent: 45 },
  'office work': { sensible: 75, latent: 55 },
};
