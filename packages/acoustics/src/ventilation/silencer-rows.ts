import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { SilencerRow } from './silencer-row.js';

const thesis =
  'E. Holgado Palacios, Diseño de laboratorio de ensayo para la evaluación de silenciadores in situ, thesis, Universidad Politécnica de Madrid, 2014 (oa.upm.es record 35222)';

/**
 * Two splitter silencers as measured without flow against a plain duct.
 * Source: E. Holgado Palacios, thesis, Universidad Politécnica de Madrid, 2014, Tables LXIV and LXVI, pp. 145 and 150 (as
 * transcribed; the widths of airway and splitter are read from the type number).
 */
export const silencerRows: readonly SilencerRow[] = [
  {
    id: 'split-100-200',
    description: 'airways of 100 mm, splitters of 200 mm, face 600 x 600 mm, 900 mm long, no flow',
    airway: 0.1,
    splitter: 0.2,
    length: 0.9,
    insertionLoss: asInsertionLoss([
      5.4, 4.0, 3.9, 6.0, 9.2, 10.6, 15.5, 20.8, 19.9, 19.6, 23.5, 24.8, 29.0, 31.2, 32.9, 38.4, 42.1, 43.8, 40.0, 35.2,
      27.2,
    ]),
    source: `${thesis}, Tabla LXIV, p. 145`,
  },
  {
    id: 'split-200-200',
    description: 'airways of 200 mm, splitters of 200 mm, face 800 x 600 mm, 900 mm long, no flow',
    airway: 0.2,
    splitter: 0.2,
    length: 0.9,
    insertionLoss: asInsertionLoss([
      2.2, 2.7, 2.6, 3.8, 2.7, 4.3, 8.4, 10.5, 10.7, 11.1, 12.7, 14.6, 17.5, 17.6, 21.1, 25.6, 25.1, 19.2, 13.4, 11.5,
      6.0,
    ]),
    source: `${thesis}, Tabla LXVI, p. 150`,
  },
];
