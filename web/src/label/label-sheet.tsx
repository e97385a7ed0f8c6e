import { useId } from "react";
import type { LabelWords } from "./label-data.js";
import type { CodePath } from "./qr.js";

interface LabelSheetProps {
  readonly words: LabelWords;
  /** Null: it did not fit. */
  readonly code: CodePath | null;
  readonly paper: "label" | "sheet";
}

/** The label itself, in the size in which it is printed. */
export function LabelSheet({ words, code, paper }: LabelSheetProps) {
  const { motor, name, label, lot, made, delay, removed, before, after, when } = words;
  const marked = [label === null ? null : `no. ${label}`, lot === null ? null : `lot ${lot}`, made && `made ${made}`];
  return (
    <section className={`label label-on-${paper}`} data-theme="paper" aria-label="Label">
      <div className="label-words">
        <p className="label-motor">
          <b>{name}</b> {motor}
        </p>
        <p>
          {marked
            .filter((word) => word !== null)
            .map((word) => (
              <span key={word} className="label-mark">
                {word}{" "}
              </span>
            ))}
        </p>
        <p className="label-delay">{delay}</p>
        {removed !== null && <p>{removed}</p>}
        {before !== null && after !== null && (
          <p>
            from {before} to {after}
          </p>
        )}
        {when !== null && <p>read {when.replace("T", " ")}</p>}
      </div>
      {code !== null && <Code code={code} name={name} />}
      <p className="label-never">Do not lengthen: what is cut stays cut.</p>
    </section>
  );
}

function Code({ code, name }: { readonly code: CodePath; readonly name: string }) {
  const id = useId();
  return (
    <svg
      className="label-code"
      viewBox={`0 0 ${code.size} ${code.size}`}
      role="img"
      aria-labelledby={`${id}t`}
      aria-describedby={`${id}d`}
      shapeRendering="crispEdges"
    >
      <title id={`${id}t`}>Code of {name}</title>
      <desc id={`${id}d`}>A square code for a camera; what it says stands below the label.</desc>
      <rect className="label-code-ground" width={code.size} height={code.size} />
      <path className="label-code-dots" d={code.path} />
    </svg>
  );
}
