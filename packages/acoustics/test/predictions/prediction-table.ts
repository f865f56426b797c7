import { openings } from './openings.js';
import type { PredictedValue } from './prediction.js';
import { ratings } from './ratings.js';
import { rooms } from './rooms.js';
import { roomsModels } from './rooms-models.js';
import { ventilation } from './ventilation.js';
import { walls } from './walls.js';
import { wallsClosedForm } from './walls-closed-form.js';

/** All predictions by name, evaluated now. The name is `folder/what`. */
export function predictionTable(): Record<string, PredictedValue> {
  const table: Record<string, PredictedValue> = {};
  for (const group of [openings, ratings, rooms, roomsModels, ventilation, walls, wallsClosedForm]) {
    for (const [name, predict] of Object.entries(group)) {
      if (name in table) throw new Error(`two predictions are named ${name}`);
      table[name] = predict();
    }
  }
  return table;
}
