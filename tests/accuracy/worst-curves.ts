/**
 * Why the curves that are met worst are met badly, by id, as far as it can be known from the table: the sources print no
 * section, edge or loss factor, so each is a likely cause and none is measured.
 */
export const likelyCauses: Readonly<Record<string, string>> = {
  'bies-gyp16-200-gyp16-abs88-stag':
    'From 500 Hz on the prediction passes 65 dB. Nothing but the layers and the cavity carries sound in it; in a real wall the common plates at the rim, joints and the flanking of the test room take over well before.',
  'ros-wood-floor':
    'The prediction lets rigid joists carry most of the sound above 1 kHz; the measured floor does not. Nails and hangers are point contacts and depths are not printed. The measured slope, 20 dB from 500 Hz to 4 kHz, also shows no coincidence of 12.7 mm boards.',
  'bies-lead-1.5':
    'The printed curve is flat at 32 dB from 250 Hz to 4 kHz, which no limp sheet of 17 kg/m2 does: the mass law rises by 6 dB an octave. Leaks round the sheet would explain the top, not the bottom. No model of the sheet alone gives it.',
  'bies-gyp16-200-gyp16':
    'Coincidence of the boards near 2.5 kHz is predicted too deep: the loss factor of boards in place is taken as 0.05 for all. The measured 64 dB at 1 kHz is also 14 dB above its neighbour and 13 dB above the next, steeper than the model knows.',
  'bies-glass6-188-6':
    'Below coincidence the frames carry sound that the prediction leaves out; at 2 kHz the dip is too deep, because edge seals damp the panes more than the loss factor of 0.02 says. The printed gap of 188 mm wins at most 5 dB over 100 mm.',
  'bies-glass6-100-6':
    'Frames carry sound below coincidence that the prediction leaves out; at 2 kHz the dip is too deep, because edge seals damp the panes more than the loss factor of 0.02 says.',
  'bies-glass6-100-8':
    'The measured curve is 7 to 17 dB above that of the twin with two 6 mm panes up to 1 kHz, more than 2 mm of glass can add; the two rows come from different set-ups, and one prediction cannot meet both.',
  'ros-metal-gyp13':
    'At 125 Hz the resonance of boards on the cavity is predicted 10 dB too deep; the measured dip lies in the 2 kHz octave, the predicted one in that of 4 kHz, so the boards of the test were stiffer or thicker.',
  'bies-steel-damped-gf100':
    'Mass of the damping layer and grade of the wool are what the total leaves over. The measured curve is 4 to 11 dB lower throughout, as a smaller mass or a joint would make it.',
  'bies-steel-0.55':
    'The source prints 6 kg/m2 where steel of that thickness has 4.3 kg/m2; with the lighter sheet the errors would be 3 dB smaller. The measured curve also flattens above 1 kHz, as leaks make it.',
  'bies-lamglass-13':
    'One plate of 13 mm has its coincidence near 1 kHz; the film lets the two panes slide, which moves and damps the dip. The printed curve shows none.',
  'bies-brick-125': 'The plaster is not brick, and the bonds of the edges to the test room are not known.',
  'bies-stud100-softboard':
    'The prediction is too low at 125 Hz, the resonance on the cavity, and at 2 kHz. Modulus and density of soft board are from memory.',
  'bies-door-laminate-flush':
    'The measured curve stays at 18 dB: sound goes round the leaf. Its seals are not stated, and the prediction is of the leaf alone.',
  'bies-door-hardwood-54':
    'Above 1 kHz the seals rule, which are not stated. 20 kg/m2 at 54 mm is much lighter than hardwood: the leaf is hollow or framed.',
};
