/** The shipped catalogue, written in the language itself. One row of a source per material, no figure fitted to a result. */
export const catalogueText: string = `# Materials for booths. Facts with citations, no prices: what a material costs is yours to say.
# "read in a transcription" means that the figure was taken from a public transcription of the table, not from the printed page.
# Loss factors of boards and panes are those of panels fixed in a building, edges included, where the source gives them.
# Density and modulus of a real board vary by ten percent and more: weigh yours and override what matters.

# ---------------------------------------------------------------- boards

material birch-plywood "birch plywood" {
  kind        panel
  density     710 kg/m3
  modulus     9.58 GPa from derived "E = density x cL^2 x (1 - nu^2) with cL = 3850 m/s and nu = 0.3 of C. Hopkins, Sound Insulation (2007), Table A2"
  poisson     0.3 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
  loss-factor 0.05 from practice "as for softwood plywood in D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, panels in place"
  sheet       1.22 m x 2.44 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "C. Hopkins, Sound Insulation (2007), Table A2, read in a transcription"
}

material softwood-plywood "softwood (fir) plywood" {
  kind        panel
  density     600 kg/m3
  modulus     8.3 GPa
  poisson     0.3 from practice "the estimate for wood boards in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.05
  sheet       1.22 m x 2.44 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material osb "oriented strand board" {
  kind        panel
  density     590 kg/m3
  modulus     3.55 GPa from derived "E = density x cL^2 x (1 - nu^2) with the effective cL = 2570 m/s and nu = 0.3 of C. Hopkins, Sound Insulation (2007), Table A2"
  poisson     0.3 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
  loss-factor 0.05 from practice "as for other wood boards in D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, panels in place"
  sheet       1.22 m x 2.44 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "C. Hopkins, Sound Insulation (2007), Table A2, read in a transcription"
}

material mdf "medium density fibreboard" {
  kind        panel
  density     770 kg/m3
  modulus     3.7 GPa
  poisson     0.3 from practice "the estimate for wood boards in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.05
  sheet       1.22 m x 2.44 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material particle-board "particle board, flooring grade" {
  kind        panel
  density     700 kg/m3
  modulus     2.8 GPa
  poisson     0.3 from practice "the estimate for wood boards in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.05
  sheet       1.22 m x 2.44 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material solid-core "door leaf of solid particle board, standard grade" {
  kind        panel
  density     625 kg/m3
  modulus     2.1 GPa
  poisson     0.3 from practice "the estimate for wood boards in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.05
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, standard particle board, read in a transcription; the facings of a leaf are left out"
}

material hardboard "hardboard (compressed wood fibre)" {
  kind        panel
  density     1000 kg/m3
  modulus     4.0 GPa
  poisson     0.3 from practice "the estimate for wood boards in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.05
  sheet       1.22 m x 2.44 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

# Solid wood is far stiffer along the grain than across it: the modulus is that along it. Ratios across it differ by species and by how a board is sawn.
material softwood-board "solid softwood, glued boards" {
  kind           panel
  density        440 kg/m3
  modulus        10.0 GPa from derived "E = density x cL^2 x (1 - nu^2) with cL = 5000 m/s and nu = 0.3 of C. Hopkins, Sound Insulation (2007), Table A2, softwood timber"
  modulus-across 0.5 GPa from memory "0.05 of the modulus along the grain, elastic ratios of softwoods in the Wood Handbook, Forest Products Laboratory; not opened"
  shear-modulus  0.7 GPa from memory "0.07 of the modulus along the grain, elastic ratios of softwoods in the Wood Handbook, Forest Products Laboratory; not opened"
  poisson        0.3 from published "C. Hopkins, Sound Insulation (2007), Table A2, softwood timber, read in a transcription"
  loss-factor    0.05 from practice "as for oak and wood boards in D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, panels in place"
  source         published "C. Hopkins, Sound Insulation (2007), Table A2, softwood timber, read in a transcription"
}

material oak-board "solid oak, glued boards" {
  kind           panel
  density        630 kg/m3
  modulus        12 GPa
  modulus-across 0.864 GPa from memory "0.072 of the modulus along the grain, elastic ratios of oak in the Wood Handbook, Forest Products Laboratory; not opened"
  shear-modulus  1.032 GPa from memory "0.086 of the modulus along the grain, elastic ratios of oak in the Wood Handbook, Forest Products Laboratory; not opened"
  poisson        0.3 from practice "the estimate for wood boards in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor    0.05
  source         published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, oak, read in a transcription"
}

material gypsum-board "gypsum board" {
  kind        panel
  density     760 kg/m3
  modulus     2.1 GPa
  poisson     0.24
  loss-factor 0.05
  sheet       1.2 m x 2.4 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material gypsum-board-reinforced "gypsum board with glass fibre" {
  kind        panel
  density     800 kg/m3
  modulus     2.94 GPa from derived "E = density x cL^2 x (1 - nu^2) with cL = 2010 m/s and nu = 0.3 of C. Hopkins, Sound Insulation (2007), Table A2"
  poisson     0.3 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
  loss-factor 0.05 from practice "as for gypsum board in D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, panels in place"
  sheet       1.2 m x 2.4 m from practice "a size that many yards stock; yours may cut or sell others"
  source      published "C. Hopkins, Sound Insulation (2007), Table A2, read in a transcription"
}

material soft-fibreboard "soft wood-fibre board" {
  kind        panel
  density     250 kg/m3
  modulus     0.2 GPa
  poisson     0.15 from published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, wood fibre board, read in a transcription"
  loss-factor 0.05 from published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, wood fibre board in place, read in a transcription"
  source      memory "insulation-grade board; no document opened"
}

# ---------------------------------------------------------------- panes

material acrylic "acrylic (PMMA) sheet" {
  kind        panel
  density     1190 kg/m3
  modulus     3.5 GPa
  poisson     0.35
  loss-factor 0.02
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material polycarbonate "polycarbonate sheet" {
  kind        panel
  density     1200 kg/m3
  modulus     2.3 GPa
  poisson     0.35
  loss-factor 0.1
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material glass "float glass" {
  kind        panel
  density     2500 kg/m3
  modulus     68 GPa
  poisson     0.23
  loss-factor 0.02
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material laminated-glass "laminated glass" {
  kind        panel
  density     2500 kg/m3
  modulus     68 GPa
  poisson     0.23
  loss-factor 0.1
  source      memory "mass and stiffness of float glass; loss factor within 0.05 to 0.15 for a common interlayer at 20 degC; no document opened"
}

# ---------------------------------------------------------------- metals and heavy sheets

material steel-sheet "steel sheet" {
  kind        panel
  density     7850 kg/m3
  modulus     207 GPa
  poisson     0.3
  loss-factor 0.01
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material aluminium-sheet "aluminium sheet" {
  kind        panel
  density     2700 kg/m3
  modulus     70 GPa
  poisson     0.35
  loss-factor 0.01
  source      published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

material lead-sheet "lead sheet" {
  kind    limp
  density 11340 kg/m3
  source  published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}

# Sold by mass per area: write the mass on the layer's line.
material limp-sheet "loaded limp sheet" {
  kind    limp
  density 2450 kg/m3 from derived "4.9 kg/m2 at 2 mm, loaded sheet in D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table 7.6"
}

# ---------------------------------------------------------------- masonry

# Walls of the building, as party walls or the wall behind a lining. The loss factors are those of the material alone:
# a wall that is built in at its edges loses more and keeps out some decibels more than is said.
material brick "brick with mortar" {
  kind        panel
  density     1750 kg/m3 from derived "middle of the 1500 to 2000 kg/m3 of C. Hopkins, Sound Insulation (2007), Table A2"
  modulus     12.25 GPa from derived "E = density x cL^2 x (1 - nu^2) with cL = 2700 m/s and nu = 0.2 of C. Hopkins, Sound Insulation (2007), Table A2"
  poisson     0.2 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
  loss-factor 0.01 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
}

material concrete "concrete cast in place" {
  kind        panel
  density     2200 kg/m3
  modulus     30.5 GPa from derived "E = density x cL^2 x (1 - nu^2) with cL = 3800 m/s and nu = 0.2 of C. Hopkins, Sound Insulation (2007), Table A2"
  poisson     0.2 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
  loss-factor 0.005 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
  source      published "C. Hopkins, Sound Insulation (2007), Table A2, read in a transcription"
}

material aerated-concrete "aerated concrete blocks" {
  kind        panel
  density     600 kg/m3 from derived "middle of the 400 to 800 kg/m3 of C. Hopkins, Sound Insulation (2007), Table A2"
  modulus     2.08 GPa from derived "E = density x cL^2 x (1 - nu^2) with cL = 1900 m/s and nu = 0.2 of C. Hopkins, Sound Insulation (2007), Table A2"
  poisson     0.2 from published "C. Hopkins, Sound Insulation (2007), Table A2, marked as an estimate there, read in a transcription"
  loss-factor 0.0125
  source      published "C. Hopkins, Sound Insulation (2007), Table A2, read in a transcription"
}

material concrete-block "dense concrete blocks, solid" {
  kind        panel
  density     2000 kg/m3
  modulus     19 GPa
  poisson     0.2 from practice "the estimate for masonry in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.01 from practice "as for brick in C. Hopkins, Sound Insulation (2007), Table A2"
  source      memory "no document opened; weigh a block and take the strength class from its sheet"
}

material plaster "gypsum plaster" {
  kind        panel
  density     1200 kg/m3
  modulus     4 GPa
  poisson     0.2 from practice "the estimate for masonry in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.01 from practice "as for brick in C. Hopkins, Sound Insulation (2007), Table A2"
  source      memory "no document opened; mixes differ by a fifth"
}

material render "sand and cement render" {
  kind        panel
  density     1900 kg/m3
  modulus     15 GPa
  poisson     0.2 from practice "the estimate for masonry in C. Hopkins, Sound Insulation (2007), Table A2"
  loss-factor 0.01 from practice "as for brick in C. Hopkins, Sound Insulation (2007), Table A2"
  source      memory "no document opened; mixes differ by a fifth"
}

# ---------------------------------------------------------------- fibre and foam

# Resistivity through the slab. The constants are printed, the form of the equation is remembered.
material mineral-wool-40 "mineral wool, 40 kg/m3" {
  kind        porous
  density     40 kg/m3 from practice "the grade itself"
  resistivity 12.2 kPa.s/m2 from derived "780 x density^1.59 / 4.75^2, constants of C. Hopkins, Sound Insulation (2007), Eq. 1.165 for rock wool, pp. 80-81; form of the equation from memory"
}

material mineral-wool-60 "mineral wool, 60 kg/m3" {
  kind        porous
  density     60 kg/m3 from practice "the grade itself"
  resistivity 23.2 kPa.s/m2 from derived "780 x density^1.59 / 4.75^2, constants of C. Hopkins, Sound Insulation (2007), Eq. 1.165 for rock wool, pp. 80-81; form of the equation from memory"
}

material mineral-wool-100 "mineral wool, 100 kg/m3" {
  kind        porous
  density     100 kg/m3 from practice "the grade itself"
  resistivity 52.3 kPa.s/m2 from derived "780 x density^1.59 / 4.75^2, constants of C. Hopkins, Sound Insulation (2007), Eq. 1.165 for rock wool, pp. 80-81; form of the equation from memory"
}

material glass-wool "glass wool, 32 kg/m3" {
  kind        porous
  density     32 kg/m3
  resistivity 15 kPa.s/m2
  source      memory "a common duct and wall grade; within the 1 to 150 kPa.s/m2 of T. Cox, P. D'Antonio, Acoustic Absorbers and Diffusers, 3rd ed. (2017), Table 6.2"
}

material glass-wool-130 "dense glass wool, 130 kg/m3" {
  kind        porous
  density     130 kg/m3
  resistivity 40 kPa.s/m2
  source      published "J. F. Allard, N. Atalla, Propagation of Sound in Porous Media, 2nd ed. (2009), Table 11.8, read in a transcription"
}

material polyester-batting "polyester batting, 20 kg/m3" {
  kind        porous
  density     20 kg/m3 from practice "the grade itself"
  resistivity 1.75 kPa.s/m2 from memory "26 x density^1.404, M. Garai, F. Pompoli, 2005, for fibres of 18 to 48 um; no document opened"
}

material felt "wool or fibre felt" {
  kind        porous
  density     150 kg/m3 from memory "no document opened"
  resistivity 44 kPa.s/m2 from derived "geometric middle of 26 to 73.3 kPa.s/m2, T. Cox, P. D'Antonio, Acoustic Absorbers and Diffusers, 3rd ed. (2017), Table 6.2"
}

material melamine-foam "melamine foam" {
  kind        porous
  density     9.5 kg/m3 from memory "no document opened"
  resistivity 13.6 kPa.s/m2 from derived "geometric middle of 10.5 to 17.5 kPa.s/m2, T. Cox, P. D'Antonio, Acoustic Absorbers and Diffusers, 3rd ed. (2017), Table 6.2"
}

material polyurethane-foam "open-cell polyurethane foam" {
  kind        porous
  density     28 kg/m3 from memory "no document opened"
  resistivity 7.6 kPa.s/m2 from derived "geometric middle of 4.5 to 12.9 kPa.s/m2, T. Cox, P. D'Antonio, Acoustic Absorbers and Diffusers, 3rd ed. (2017), Table 6.2"
}

# ---------------------------------------------------------------- cloth

material open-weave-cloth "open-weave cloth" {
  kind            cloth
  surface-mass    0.2 kg/m2
  flow-resistance 20 Pa.s/m
  source          memory "cloth one can blow through without effort; no document opened"
}

material close-weave-cloth "close-weave upholstery cloth" {
  kind            cloth
  surface-mass    0.4 kg/m2
  flow-resistance 250 Pa.s/m
  source          memory "cloth that resists blowing; no document opened"
}

# ---------------------------------------------------------------- floors and mats

material carpet-tile "carpet tile" {
  kind         covering
  surface-mass 4 kg/m2 from memory "tile with a heavy back; no document opened"
  thickness    6 mm from memory "no document opened"
  absorption   octave 125 Hz 0.01, 250 Hz 0.05, 500 Hz 0.10, 1 kHz 0.20, 2 kHz 0.45, 4 kHz 0.65 from published "M. Long, Architectural Acoustics, 2nd ed. (2014), Table 7.1, pp. 283-286, indoor-outdoor carpet, read in a transcription"
}

material carpet-on-underlay "heavy carpet on felt or foam underlay" {
  kind         covering
  surface-mass 3.5 kg/m2 from memory "carpet and 1.35 kg/m2 underlay together; no document opened"
  thickness    12 mm from memory "no document opened"
  absorption   octave 125 Hz 0.08, 250 Hz 0.24, 500 Hz 0.57, 1 kHz 0.69, 2 kHz 0.71, 4 kHz 0.73 from published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table 6.2, pp. 338-340, heavy carpet on 1.35 kg/m2 felt or foam rubber, read in a transcription"
}

material rubber-mat "rubber mat" {
  kind       covering
  density    1150 kg/m3 from derived "middle of 1100 to 1200 kg/m3, D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1"
  absorption octave 125 Hz 0.04, 250 Hz 0.03, 500 Hz 0.04, 1 kHz 0.04, 2 kHz 0.03, 4 kHz 0.02 from published "T. Cox, P. D'Antonio, Acoustic Absorbers and Diffusers, 3rd ed. (2017), Appendix A, cork, linoleum or rubber tile on a solid floor, read in a transcription"
}

material cork "cork sheet" {
  kind       covering
  density    250 kg/m3 from published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
  absorption octave 125 Hz 0.08, 250 Hz 0.02, 500 Hz 0.08, 1 kHz 0.19, 2 kHz 0.21, 4 kHz 0.22 from published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table 6.2, pp. 338-340, glued cork floor tiles, read in a transcription"
}

# ---------------------------------------------------------------- lumber

material softwood "softwood studs" {
  kind    lumber
  density 440 kg/m3
  stock   2.4 m from practice "a length that many yards stock; yours may sell others"
  source  published "C. Hopkins, Sound Insulation (2007), Table A2, softwood timber, read in a transcription"
}

material steel-stud "light steel studs" {
  kind    lumber
  density 7850 kg/m3
  gauge   0.5 mm from practice "partition studs are folded from 0.5 to 0.6 mm; yours has it stamped on"
  stock   3 m from practice "a length that many yards stock; yours may sell others"
  source  published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, steel, read in a transcription"
}

material oak "oak studs" {
  kind    lumber
  density 630 kg/m3
  stock   2.4 m from practice "a length that many yards stock; yours may sell others"
  source  published "D. A. Bies, C. H. Hansen, C. Q. Howard, Engineering Noise Control, 5th ed. (2017), Table C.1, pp. 718-721, read in a transcription"
}
`;
