import { overCutSentences, percent } from "@delaywright/documents";
import type { OverCut } from "@delaywright/engine";

/** What can be done with a motor that was cut too deep, each way with its odds; the last: do not fly it. */
export function OverCutWays({ overCut }: { readonly overCut: OverCut }) {
  const { now, ways, doNotFly } = overCutSentences(overCut);
  const odds = [...overCut.ballast.map(({ best }) => best.clean), ...overCut.rockets.map(({ clean }) => clean)];
  return (
    <div className="sheet-ways">
      <h3 className="sheet-part">What would make it right</h3>
      <p>{now} Read the depth once more before you believe it.</p>
      <ol>
        {ways.map((way, i) => {
          const [does = way, but] = way.split(" But ");
          return (
            <li key={way}>
              <span>
                {does}
                {but !== undefined && <small>But {but}</small>}
              </span>
              <b>{percent(odds[i] ?? 0)}</b>
            </li>
          );
        })}
        <li>
          <span>{doNotFly ?? "Do not fly it: keep it, labelled with its delay, for a rocket that it suits."}</span>
        </li>
      </ol>
    </div>
  );
}
