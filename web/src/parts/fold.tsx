import "./section.css";
import { type ReactNode, useRef, useState } from "react";
import { Button, Disclosure, DisclosurePanel, Heading } from "react-aria-components";
import { useFoldedDrawn } from "./folded-later.js";
import { Section } from "./section.js";
import { useNarrow } from "./use-narrow.js";
import { useRevealed } from "./use-revealed.js";

/** How far a section has come. */
export type FoldMark = "full" | "part" | "now" | "open";

const markWords: Readonly<Record<FoldMark, string>> = Object.freeze({
  full: "complete",
  part: "something missing",
  now: "next",
  open: "not begun",
});

export interface FoldProps {
  readonly id: string;
  readonly title: string;
  readonly aside?: ReactNode;
  readonly mark?: FoldMark;
  /** Open on a phone from the start. */
  readonly open?: boolean;
  /** Something is under way in it: it is not folded away, also where a phone is turned meanwhile. */
  readonly busy?: boolean;
  readonly children: ReactNode;
}

/** A section that folds to one line on a phone; on a desk it is always open. */
export function Fold({ id, title, aside, mark = "open", open = false, busy = false, children }: FoldProps) {
  const narrow = useNarrow();
  const [expanded, setExpanded] = useState(open);
  if (busy && !narrow && !expanded) setExpanded(true);
  const place = useRef<HTMLDivElement>(null);
  useRevealed(place, () => setExpanded(true));
  const drawn = useFoldedDrawn(expanded);
  if (!narrow)
    return (
      <Section id={id} title={title} aside={aside}>
        {children}
      </Section>
    );
  return (
    <Disclosure ref={place} className="fold" isExpanded={expanded} onExpandedChange={setExpanded}>
      <Heading level={2} id={id}>
        <Button slot="trigger">
          <span className={`fold-mark ${mark}`} aria-hidden="true" />
          <span>
            {title}
            <span className="hidden">, {markWords[mark]}</span>
          </span>
          <small>{aside}</small>
        </Button>
      </Heading>
      <DisclosurePanel>
        <div className="fold-body">{drawn && children}</div>
      </DisclosurePanel>
    </Disclosure>
  );
}
