/** The read-only document that holds the catalogue; an editor that can show it asks for it by `catalogueRequest`. */
export const catalogueUri = 'booth-catalog:/catalog.booth';
export const catalogueRequest = 'boothwright/catalogue';
