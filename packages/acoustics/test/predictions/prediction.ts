/** What a prediction may give: a number, a list by band, a word, or nothing. */
export type PredictedValue = number | string | boolean | null | readonly (number | null)[];

/** Predictions of one group by name; each is evaluated when the table is made. */
export type PredictionGroup = Readonly<Record<string, () => PredictedValue>>;
