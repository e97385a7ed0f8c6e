import { delayNumber } from "@delaywright/documents";
import type { Told } from "../compute/index.js";
import { Verdict } from "../parts/index.js";
import { Thumbnail } from "../pictures/thumbnail.js";
import { targetOf } from "../standing/target.js";
import type { BrokenWords, CardWords } from "./card-words.js";

/** Least odds that are drawn before there is an answer. */
const LEAST = 0.8;

/** Documents that are wrong or not complete. */
export function BrokenBody({ words }: { readonly words: BrokenWords }) {
  return (
    <>
      <p className="bench-lead">{words.lead}</p>
      <p className="bench-why">{words.why}</p>
      {!words.onlyMissing && <p className="bench-why">The plan is kept as it is; nothing was thrown away.</p>}
    </>
  );
}

/** No answer yet, in the place and size of one. */
export function WaitingBody({ failure }: { readonly failure: string | null }) {
  return (
    <>
      <div className="bench-answer settling">
        <b>{failure === null ? "Cut to …" : "No answer"}</b>
        {failure === null && (
          <span>
            <b>…</b> clean
          </span>
        )}
      </div>
      <Thumbnail settings={[]} least={LEAST} chosen={null} />
      <p className="bench-how">{failure ?? "flying the first draws"}</p>
    </>
  );
}

interface AnswerBodyProps {
  readonly told: Told;
  readonly words: CardWords;
  readonly settling: boolean;
  readonly stale: boolean;
  readonly failure: string | null;
}

/** The answer: what to cut, its odds, its notches, how, and what to look at. */
export function AnswerBody({ told, words, settling, stale, failure }: AnswerBodyProps) {
  const quiet = [settling && "settling", words.past && "past", stale && "stale"].filter(Boolean).join(" ");
  return (
    <>
      <div className={`bench-answer ${quiet}`}>
        <b>{words.lead}</b>
        {words.odds !== null && (
          <span>
            <b>{words.odds}</b> {words.oddsNote}
          </span>
        )}
      </div>
      <Notches told={told} stale={stale} />
      {words.old !== null && (
        <p>
          <b>{words.old}</b>
        </p>
      )}
      <p className="bench-how">{failure ?? words.how}</p>
      {words.check !== null && (
        <p className="bench-check">
          <Verdict word={words.check.word} /> {words.check.words}
        </p>
      )}
    </>
  );
}

function Notches({ told, stale }: { readonly told: Told; readonly stale: boolean }) {
  const { data, density } = told;
  const setting = targetOf(data);
  const isThere = data.settings.some(({ delay }) => delayNumber(delay) === delayNumber(setting?.delay ?? -1));
  const own = setting === null || isThere ? [] : [setting];
  return (
    <Thumbnail
      settings={[...data.settings, ...own]}
      least={data.limits.leastClean}
      chosen={setting?.delay ?? null}
      density={density}
      coast={data.coast}
      stale={stale}
    />
  );
}
