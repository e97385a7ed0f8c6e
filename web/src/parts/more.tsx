import "./section.css";
import { type ReactNode, useRef, useState } from "react";
import { Button, Disclosure, DisclosurePanel, Heading } from "react-aria-components";
import { useFoldedDrawn } from "./folded-later.js";
import { useRevealed } from "./use-revealed.js";

export interface MoreProps {
  readonly title: string;
  /** At the end of its line, quietly. */
  readonly aside?: string | undefined;
  /** Something inside is wrong or missing: said with weight. */
  readonly call?: string | undefined;
  readonly open?: boolean | undefined;
  readonly level?: number | undefined;
  /** Hears when it is opened and closed: for what is made only while it is looked at. */
  readonly onTurn?: (open: boolean) => void;
  readonly children: ReactNode;
}

/** Fields that most people need not look at, behind one line. */
export function More({ title, aside, call, open = false, level = 3, onTurn, children }: MoreProps) {
  const [expanded, setExpanded] = useState(open);
  const place = useRef<HTMLDivElement>(null);
  const turn = (now: boolean): void => {
    setExpanded(now);
    onTurn?.(now);
  };
  useRevealed(place, () => turn(true));
  const drawn = useFoldedDrawn(expanded);
  return (
    <Disclosure ref={place} className="more" isExpanded={expanded} onExpandedChange={turn}>
      <Heading className="more-head" level={level}>
        <Button slot="trigger">
          <span>{title}</span>
          {call === undefined ? (
            <small className="more-aside">{aside}</small>
          ) : (
            <small className="more-aside more-call">{call}</small>
          )}
          <span className="choice-mark" aria-hidden="true" />
        </Button>
      </Heading>
      <DisclosurePanel>
        <div className="more-body">{drawn && children}</div>
      </DisclosurePanel>
    </Disclosure>
  );
}
