/** A point of a fan's curve: airflow m3/s, pressure Pa. */
export type FanPoint = { readonly flow: number; readonly pressure: number };
