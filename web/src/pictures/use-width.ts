import { type RefCallback, useCallback, useRef, useState } from "react";

/** The room a picture has. One unit of its drawing is one CSS pixel, so text keeps its size at any width. */
export interface Room {
  /** [px] */
  readonly width: number;
  /** How much larger the small print is than on the desk in the plain themes: distances between lines grow with it. */
  readonly grow: number;
}

/** Size of the small print on the desk [px]: `--tick`. */
const TICK = 12;

/**
 * Watches how wide an element is and how large its small print: `box` goes on the element that the picture fills, `print`
 * on an empty element inside it that is one `--tick` wide.
 *
 * @param first the width before it is measured, and where nothing can be measured [px]
 * @example
 * const { box, print, room } = useWidth(640);
 */
export function useWidth(first = 640): {
  readonly box: RefCallback<Element>;
  readonly print: RefCallback<Element>;
  readonly room: Room;
} {
  const [room, setRoom] = useState<Room>({ width: first, grow: 1 });
  const seen = useRef<{ box: Element | null; print: Element | null }>({ box: null, print: null });
  const observer = useRef<ResizeObserver | null>(null);

  const look = useCallback(() => {
    const width = Math.floor(seen.current.box?.getBoundingClientRect().width ?? 0);
    const print = seen.current.print?.getBoundingClientRect().width ?? 0;
    if (width < 1) return;
    const grow = print > 0 ? print / TICK : 1;
    setRoom((old) => (old.width === width && old.grow === grow ? old : { width, grow }));
  }, []);

  const watch = useCallback(
    (which: "box" | "print") => (node: Element | null) => {
      const old = seen.current[which];
      if (old) observer.current?.unobserve(old);
      seen.current[which] = node;
      if (!node) return;
      observer.current ??= new ResizeObserver(look);
      observer.current.observe(node);
      look();
    },
    [look],
  );
  const box = useCallback((node: Element | null) => watch("box")(node), [watch]);
  const print = useCallback((node: Element | null) => watch("print")(node), [watch]);
  return { box, print, room };
}
