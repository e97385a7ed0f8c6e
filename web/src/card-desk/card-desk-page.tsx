import "./card-desk.css";
import { type Raw, upperFirst } from "@delaywright/documents";
import { Button } from "react-aria-components";
import { addressOf, go } from "../app/router.js";
import { PageTop } from "../chrome/page-top.js";
import { Alternatives, PickField } from "../parts/index.js";
import { addDocument, useEntries, useSettings } from "../store/index.js";
import { DeskAnswer } from "./desk-answer.js";
import { ReadCard } from "./read-card.js";
import { surroundingsOf, surroundingsWords } from "./surroundings.js";
import { TypedCard } from "./typed-card.js";
import { type Desk, useDesk } from "./use-desk.js";

const ways = [
  { id: "typed", label: "typed off" },
  { id: "code", label: "by its code" },
] as const;

/** A look at another flyer's card: to its odds and checks in two minutes, and nothing kept unless asked. */
export function CardDeskPage() {
  const desk = useDesk();
  return (
    <div className="page">
      <PageTop
        title="Card desk"
        back={{ href: addressOf({ page: "bench" }), word: "Bench" }}
        aside="another flyer's card; nothing is kept unless you ask"
      />
      <main id="main" className="desk" tabIndex={-1}>
        <section className="page-panel desk-card" aria-label="The card">
          <h2 className="hidden">The card</h2>
          <Alternatives
            label="The card is"
            items={ways}
            chosen={desk.way}
            onChoose={(id) => desk.setWay(id as Desk["way"])}
          />
          <Around desk={desk} />
          {desk.way === "typed" ? <TypedCard desk={desk} /> : <ReadCard desk={desk} />}
        </section>
        <section className="page-panel desk-answer" aria-label="What it comes to">
          <h2>What it comes to</h2>
          <Outcome desk={desk} />
        </section>
      </main>
    </div>
  );
}

/** The field and the weather of the day. */
function Around({ desk }: { readonly desk: Desk }) {
  const entries = useEntries();
  const [{ units }] = useSettings();
  const none = desk.way === "typed" ? "none: sea level, calm" : "as the card says";
  return (
    <div className="form">
      <PickField
        label="Field and weather"
        items={[
          { id: "", word: none },
          ...desk.plans.map(({ path, name, raw }) => ({
            id: path,
            word: `${name}: ${surroundingsWords(surroundingsOf(raw, entries), units)}`,
          })),
        ]}
        chosen={desk.around}
        onChoose={desk.setAround}
      />
    </div>
  );
}

function Outcome({ desk }: { readonly desk: Desk }) {
  const [{ units }] = useSettings();
  const { answer, document } = desk;
  const { told, failure, issues } = answer;
  if (failure !== null) return <p className="sheet-line">{failure}</p>;
  if (document !== null && issues.length > 0 && told === null) return <Wrong desk={desk} />;
  if (told === null) return document === null ? <Missing desk={desk} /> : <p>Flying the first draws.</p>;
  return (
    <>
      <Acts document={document} />
      <DeskAnswer desk={desk} told={told} units={units} />
      <p className="hidden" role="status">
        {answer.settling ? "" : "The answer has settled."}
      </p>
    </>
  );
}

function Acts({ document }: { readonly document: Raw | null }) {
  return (
    <div className="desk-acts">
      <Button
        className="act"
        isDisabled={document === null}
        onPress={() => document !== null && go({ page: "plan", path: addDocument("plan", document) })}
      >
        Keep as a plan
      </Button>
    </div>
  );
}

/** What is still to be typed, or read. */
function Missing({ desk }: { readonly desk: Desk }) {
  if (desk.way === "code") return <p>Read the code: then its odds and checks stand here.</p>;
  const needed = desk.issues.filter(({ code }) => code === "missing");
  return (
    <>
      <p>{needed.length === 0 ? "Something is wrong in the card." : "Still to be typed:"}</p>
      <ul className="desk-needed">
        {needed.map(({ path, accepted, example }) => (
          <li key={path}>
            {upperFirst(accepted)}, for example {example}
          </li>
        ))}
      </ul>
    </>
  );
}

/** What only shows when the parts of the card are held against each other. */
function Wrong({ desk }: { readonly desk: Desk }) {
  return (
    <ul className="desk-needed">
      {desk.issues.map(({ path, accepted, found }) => (
        <li key={`${path} ${accepted}`}>
          {upperFirst(path)}: {found} found; {accepted} is accepted.
        </li>
      ))}
    </ul>
  );
}
