import type { CardCode } from "@delaywright/documents";
import { useState } from "react";
import { Button } from "react-aria-components";
import { More } from "../parts/index.js";

/** The text of a card's code, for who has no camera. */
export function CardCodeText({ code }: { readonly code: CardCode | null }) {
  const [word, setWord] = useState("");
  if (code === null)
    return (
      <p className="caution">
        <b>The card has no code.</b>This plan is too long for one, even with a thinner thrust curve.
      </p>
    );
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(code.text);
      setWord("Copied.");
    } catch {
      setWord("The browser did not let it be copied: mark the text and copy it.");
    }
  };
  return (
    <>
      <p className="second sheet-line">
        The code holds this plan with its rocket, motor, tool and field. The card desk of another device reads it and
        computes the same figures. {keptWords(code)}
      </p>
      <div className="card-acts">
        <Button className="act" onPress={() => void copy()}>
          Copy the code as text
        </Button>
      </div>
      <p role="status" className="quiet">
        {word}
      </p>
      <More title="What the code says" aside={`${code.text.length} letters`}>
        <p className="card-text">{code.text}</p>
      </More>
    </>
  );
}

/** What was left out of a code so that it fits. */
export function keptWords({ thinned, notesLeftOut }: CardCode): string {
  return [
    notesLeftOut ? "Notes were left out so that it fits." : "",
    thinned === null
      ? ""
      : `The thrust curve is thinned from ${thinned.from} to ${thinned.to} points: impulse, burn time and average as given.`,
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}
