import fc from "fast-check";

/**
 * Property tests draw the same cases on every machine, so that a red test means a change and not luck.
 * PROPERTY_SEED=random, or a number, looks further.
 */
const asked = process.env["PROPERTY_SEED"];
if (asked !== "random") fc.configureGlobal({ seed: Number(asked ?? 20_261_125) });
