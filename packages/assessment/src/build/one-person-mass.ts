/** From here two people are the least, kg. Evidence: from memory of lifting guidance near 23 to 25 kg for one person. */
export const onePersonMass = 25;
