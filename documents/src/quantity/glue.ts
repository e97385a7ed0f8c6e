/** Joins a number and its unit so that no line breaks between them. */
export const GLUE = "\u00a0";
