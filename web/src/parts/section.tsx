import "./section.css";
import type { ReactNode } from "react";

export interface SectionProps {
  readonly id?: string;
  readonly title: string;
  /** At the end of its line: what it is about, or what is missing. */
  readonly aside?: ReactNode;
  /** A part of a section: a smaller heading. */
  readonly part?: boolean;
  readonly children: ReactNode;
}

/** A section of a page with its heading. */
export function Section({ id, title, aside, part = false, children }: SectionProps) {
  const Heading = part ? "h3" : "h2";
  return (
    <section className="section" id={id}>
      <Heading>
        {title} {aside !== undefined && <small>{aside}</small>}
      </Heading>
      <div className="section-body">{children}</div>
    </section>
  );
}
