import { type DebriefData, delayRangeWords, factorCell, type KnowledgeData } from "@delaywright/documents";

/** What is reckoned of drag, impulse and delay: before any flight, before this one, with this one. */
export function LearnedTable({ learned }: Pick<DebriefData, "learned">) {
  const { prior, before, after } = learned;
  const states: readonly (readonly [string, KnowledgeData])[] = [
    ["before any flight", prior],
    ["without this flight", before],
    ["with it", after],
  ];
  return (
    <table className="debrief-learned">
      <caption className="hidden">What is reckoned of drag, impulse and delay, and how it changed</caption>
      <thead>
        <tr>
          <th scope="col">factor on</th>
          {states.map(([word]) => (
            <th key={word} scope="col" className="n">
              {word}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <Row title="drag" cells={states.map(([word, { drag }]) => [word, factorCell(drag)])} />
        <Row title="impulse" cells={states.map(([word, { impulse }]) => [word, factorCell(impulse)])} />
        {after.delay !== null && (
          <Row
            title="delay as set"
            cells={states.map(([word, { delay }]) => [word, delay === null ? "–" : delayRangeWords(delay)])}
          />
        )}
      </tbody>
    </table>
  );
}

function Row({ title, cells }: { readonly title: string; readonly cells: readonly (readonly [string, string])[] }) {
  return (
    <tr>
      <th scope="row">{title}</th>
      {cells.map(([word, cell]) => (
        <td key={word} className="n" data-label={word}>
          {cell}
        </td>
      ))}
    </tr>
  );
}
