import { Button } from "react-aria-components";
import { addressOf, go } from "../app/router.js";
import { More, useNarrow } from "../parts/index.js";
import { type Entry, installWorkedExample } from "../store/index.js";

const needs: readonly (readonly [string, string])[] = [
  ["Rocket", "its mass, balance point, length, diameter and fins: a scale, a string, a rule"],
  ["Motor", "the one you hold, its label, and its maker's instructions: they alone say whether its delay may be cut"],
  ["Tool", "what each end takes out and each ring keeps back"],
  ["Field", "how high it lies and, on the day, the wind"],
];

/** Whether a plan is invented, for show. */
export function isExample({ raw }: Pick<Entry, "raw">): boolean {
  const note = raw?.["note"];
  return typeof note === "string" && note.startsWith("Invented");
}

interface StartPanelProps {
  readonly onNew: () => void;
  readonly isNext: boolean;
  /** No card stands beside it. */
  readonly alone: boolean;
}

/** What to have at hand, and the ways in, before there is a plan of one's own. */
export function StartPanel({ onNew, isNext, alone }: StartPanelProps) {
  const narrow = useNarrow();
  return (
    <section className={alone ? "bench-start alone" : "bench-start"} aria-labelledby="bench-start">
      <h2 id="bench-start">Start with a rocket and a motor</h2>
      <p>The delay to cut and its odds appear as you type. It all works without a network.</p>
      {narrow ? (
        <More title="What to have at hand">
          <Needs />
        </More>
      ) : (
        <Needs />
      )}
      <div className="bench-start-acts">
        <Button className={isNext ? "next-act" : "act"} onPress={onNew}>
          New plan
        </Button>
        <Button className="act" onPress={() => go({ page: "plan", path: installWorkedExample() })}>
          Open the worked example
        </Button>
        <a className="act" href={addressOf({ page: "import" })}>
          Import a back-up
        </a>
      </div>
    </section>
  );
}

function Needs() {
  return (
    <dl>
      {needs.map(([name, words]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
