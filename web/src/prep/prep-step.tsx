import type { PrepLine } from "@delaywright/documents";
import { Button } from "react-aria-components";
import { signedWords } from "./prep-words.js";

export interface PrepStepProps {
  readonly line: PrepLine;
  /** Counted from 1 down the sheet. */
  readonly number: number;
  /** The first that can be signed. */
  readonly next: boolean;
  /** Seconds that must still pass. */
  readonly secondsLeft: number;
  /** Why nothing can be signed just now; null: it can. */
  readonly closed: string | null;
  readonly onSign: () => void;
  readonly onTakeBack: () => void;
}

const marks: Readonly<Record<PrepLine["status"], string>> = Object.freeze({
  open: "open",
  signed: "signed",
  blocked: "not yet",
  "due-again": "due again",
});

/** One step: its hazards first, how it is done, why it stands here, and the signature. */
export function PrepStep({ line, number, next, secondsLeft, closed, onSign, onTakeBack }: PrepStepProps) {
  const { id, status, title, how, reason, hazards, code, waits, signed } = line;
  return (
    <li className={`prep-step ${status}${next ? " next" : ""}`} id={`prep-${id}`}>
      <div className="prep-head">
        <span className="prep-number">{number}</span>
        <h4>
          {title}
          <span className="hidden">, {marks[status]}</span>
        </h4>
        {signed !== null && <span className="prep-signed">{signedWords(signed)}</span>}
        <span className="prep-blank print-only" aria-hidden="true">
          {signed === null ? "______ __:__" : ""}
        </span>
      </div>
      {status !== "signed" && waits.length > 0 && (
        <ul className="prep-waits">
          {waits.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      )}
      <div className="prep-body">
        {hazards.length > 0 && (
          <div className="caution" role="note">
            <b>{hazards[0]}</b>
            {hazards.slice(1).join(" ")}
          </div>
        )}
        {how.map((each) => (
          <p key={each}>{each}</p>
        ))}
        {code !== null && <p className="quiet">{code}</p>}
        <p className="quiet">Why here: {reason}</p>
      </div>
      {(status === "open" || status === "due-again") && (
        <Button
          className={`prep-sign ${next ? "next-act" : "act"}`}
          isDisabled={closed !== null || secondsLeft > 0}
          aria-label={`Sign: ${title}`}
          onPress={onSign}
        >
          {secondsLeft > 0 ? `Wait ${secondsLeft} s more` : status === "open" ? "Sign" : "Sign again"}
        </Button>
      )}
      {signed !== null && (
        <Button className="act prep-back" aria-label={`Take back: ${title}`} onPress={onTakeBack}>
          Take back
        </Button>
      )}
    </li>
  );
}
