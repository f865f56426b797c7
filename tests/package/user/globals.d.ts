/** Neither Node's types nor a browser's are there; this is all that the examples use of either. */
declare const console: { log(text: string): void };
