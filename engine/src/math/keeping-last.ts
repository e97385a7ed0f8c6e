import { alike } from "./alike.js";

/**
 * A function of plain data that keeps what it made last: whoever asks for the same again, a copy of it too, gets the same object.
 *
 * @param make called where something else is asked for than the last time
 * @example
 * const squared = keepingLast(({ side }: { readonly side: number }) => ({ area: side * side }));
 * squared({ side: 2 }) === squared({ side: 2 }); // true
 */
export function keepingLast<Asked, Made extends object>(make: (asked: Asked) => Made): (asked: Asked) => Made {
  let last: { readonly asked: Asked; readonly made: Made } | null = null;
  return (asked) => {
    if (last === null || !alike(last.asked, asked)) last = { asked, made: make(asked) };
    return last.made;
  };
}
