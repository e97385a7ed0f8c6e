/**
 * Something that is made once, when it is first asked for: schemas take longer to make than a page has before it is first drawn,
 * and a visit needs few of them.
 *
 * @param make makes it
 * @returns gives it, always the same
 */
export function made<Thing extends object>(make: () => Thing): () => Thing {
  let thing: Thing | undefined;
  return () => {
    thing ??= make();
    return thing;
  };
}
