import { memo } from "react";
import { goToSection } from "./follow.js";
import type { SectionState } from "./section-state.js";

const markWords = { full: "complete", part: "something missing", now: "next", open: "not begun" } as const;

/** The sections in the order of the day, each with how far it has come. */
export const Rail = memo(function Rail({ states }: { readonly states: readonly SectionState[] }) {
  return (
    <nav className="plan-rail" aria-label="Sections">
      <ol>
        {states.map(({ id, title, mark, aside }) => (
          <li key={id}>
            <button type="button" className={mark} onClick={() => goToSection(id)}>
              <i aria-hidden="true" />
              <span>
                {title}
                <span className="hidden">, {markWords[mark]}</span>
              </span>
              <small>{aside}</small>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
});
