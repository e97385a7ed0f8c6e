import { type DebriefData, delayWords, percentCell } from "@delaywright/documents";

/** Odds of each setting of the next motor, without this flight and with it. */
export function NextTable({ next }: Pick<DebriefData, "next">) {
  const { before, after } = next;
  const rows = after.settings.map((setting) => ({
    ...setting,
    was: before.settings.find(({ delay }) => Math.abs(delay - setting.delay) < 1e-6) ?? null,
  }));
  if (rows.length === 0) return null;
  return (
    <table className="debrief-next">
      <caption className="hidden">Odds of the next flight by delay, without this flight and with it</caption>
      <thead>
        <tr>
          <th scope="col">next delay</th>
          <th scope="col" className="n">
            clean without it, %
          </th>
          <th scope="col" className="n">
            with it, %
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ delay, clean, was }) => {
          const chosen = after.toCut !== null && Math.abs(after.toCut.delay - delay) < 1e-6;
          return (
            <tr key={delay} className={chosen ? "mine" : ""}>
              <th scope="row">
                {delayWords(delay)}
                {chosen && <small> to cut</small>}
              </th>
              <td className="n">{was === null ? "–" : percentCell(was.clean)}</td>
              <td className="n">{percentCell(clean)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
