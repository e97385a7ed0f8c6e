import { type ComponentType, type ReactNode, useEffect, useState } from "react";
import { NotLoaded } from "./not-loaded.js";

/** A part of the app whose code comes when it is shown, or ahead of that. */
export interface LoadedLater<Props> {
  /** Brings the code without showing it. */
  readonly load: () => Promise<ComponentType<Props>>;
  /** The part, once its code is there. */
  readonly there: () => ComponentType<Props> | null;
}

/**
 * A part of the app to be loaded later.
 *
 * @param bring imports it
 */
export function loadedLater<Props extends object>(bring: () => Promise<ComponentType<Props>>): LoadedLater<Props> {
  let part: ComponentType<Props> | null = null;
  return {
    load: async () => {
      part ??= await bring();
      return part;
    },
    there: () => part,
  };
}

interface ShownProps<Props> {
  /** The same for as long as it is shown. */
  readonly part: LoadedLater<Props>;
  /** What the part is shown with. */
  readonly props: Props;
  /** Stands in its place until its code is there. */
  readonly waiting: ReactNode;
  /** It is all that the page shows. */
  readonly wholePage?: boolean;
}

/**
 * Shows a part that is loaded later: at once where its code is there, else as soon as it has come. React's own way keeps what
 * stands in its place for a third of a second, also where there was nothing to wait for.
 */
export function Loaded<Props extends object>({
  part,
  props,
  waiting,
  wholePage = false,
}: ShownProps<Props>): ReactNode {
  const [Part, show] = useState(part.there);
  const [failed, fail] = useState<{ readonly error: unknown } | null>(null);
  useEffect(() => {
    if (Part !== null || failed !== null) return;
    part.load().then(
      (come) => show(() => come),
      (error: unknown) => fail({ error }),
    );
  }, [Part, part, failed]);
  if (failed !== null && !isMissing(failed.error)) throw failed.error;
  if (failed !== null) return <NotLoaded again={() => fail(null)} wholePage={wholePage} />;
  return Part === null ? waiting : <Part {...props} />;
}

/** Could its file not be had? Browsers say so in words of their own; what breaks while it runs is a defect. */
export function isMissing(error: unknown): boolean {
  return error instanceof Error && /\bmodule\b|\bpreload\b/i.test(error.message);
}
