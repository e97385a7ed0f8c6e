import "./card.css";
import { cardPage } from "@delaywright/documents";
import { useMemo, useRef, useState } from "react";
import { Button } from "react-aria-components";
import type { PlanAnswer } from "../compute/index.js";
import { Alternatives, Fold, type FoldMark, printAlone, revealField } from "../parts/index.js";
import { saveText } from "../parts/save-file.js";
import { useWidth } from "../pictures/use-width.js";
import { useSettings } from "../store/index.js";
import { CardCodeText } from "./card-code-text.js";
import { CardSheet } from "./card-sheet.js";
import { cardFileName, papers, rememberedPaper, rememberPaper } from "./paper.js";
import { type KnownCard, useCard } from "./use-card.js";
import { useLooked } from "./use-looked.js";

export interface CardSectionProps {
  /** Of the plan. */
  readonly path: string;
  readonly answer: PlanAnswer;
  /** Name of who flies; null: none is chosen. */
  readonly flyer: string | null;
  readonly mark?: FoldMark;
  readonly aside?: string;
}

/** The flight card of a plan: what goes to the range safety officer, on one sheet. */
export function CardSection({ path, answer, flyer, mark = "open", aside }: CardSectionProps) {
  const [place, looked] = useLooked();
  const known = useCard(path, answer, looked);
  return (
    <Fold id="card" title="Card" mark={mark} aside={aside}>
      <p className="card-flyer">
        <span>{flyer === null ? "No flyer is chosen: the name is written in by hand." : `Flyer: ${flyer}`}</span>
        <Button className="act" onPress={() => revealField(path, "flyer")}>
          {flyer === null ? "Choose the flyer" : "Another flyer"}
        </Button>
      </p>
      <div ref={place} className="card-place">
        {known === null ? (
          <p className="sheet-line">
            {answer.told === null ? "The card needs an answer first." : "The card is made …"}
          </p>
        ) : (
          <Card path={path} known={known} />
        )}
      </div>
    </Fold>
  );
}

function Card({ path, known }: { readonly path: string; readonly known: KnownCard }) {
  const [{ units }] = useSettings();
  const [paper, setPaper] = useState(rememberedPaper);
  const [full, setFull] = useState(false);
  const { box, room } = useWidth(paper.width);
  const sheet = useRef<HTMLDivElement>(null);
  const { card, code, current } = known;
  const page = useMemo(() => cardPage(card, code, { paper: paper.id, units }), [card, code, paper, units]);
  const fitting = Math.min(1, room.width / paper.width);
  return (
    <>
      <Alternatives
        label="Paper"
        items={papers}
        chosen={paper.id}
        onChoose={(id) => {
          const chosen = papers.find((each) => each.id === id) ?? paper;
          setPaper(chosen);
          rememberPaper(chosen);
        }}
      />
      <div className="card-acts">
        <Button className="act" isDisabled={!current} onPress={() => printAlone(sheet.current)}>
          Print the card
        </Button>
        <Button
          className="act"
          isDisabled={!current}
          onPress={() => saveText(cardFileName(path), page.html, "text/html")}
        >
          Save it as a file
        </Button>
        {fitting < 1 && (
          <Button className="act" onPress={() => setFull(!full)}>
            {full ? "Fit it to the page" : "Show it as large as it prints"}
          </Button>
        )}
      </div>
      <p className="sheet-line card-waiting" role="status">
        {current ? "" : "The plan has changed: the card follows in a moment."}
      </p>
      <div ref={box} className="card-room">
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard */}
        <section className="card-scroll" aria-label="Flight card" tabIndex={0}>
          <CardSheet host={sheet} page={page} paper={paper} zoom={full ? 1 : fitting} />
        </section>
      </div>
      <CardCodeText code={code} />
    </>
  );
}
