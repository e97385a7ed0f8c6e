import { type StabilityMoment, stabilityCells, stabilityHeads, type UnitSystem } from "@delaywright/documents";

interface MomentsTableProps {
  readonly moments: readonly StabilityMoment[];
  readonly units: UnitSystem;
}

/** Margin, frequency and damping of the swing where they matter. */
export function MomentsTable({ moments, units }: MomentsTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls where it is narrow, also by keyboard
    <section className="steady-table" aria-label="Margin and damping" tabIndex={0}>
      <table>
        <thead>
          <tr>
            {stabilityHeads(units).map((head) => {
              const [name, unit] = head.split("\n");
              return (
                <th key={head} scope="col">
                  {name} {unit !== undefined && <small>{unit}</small>}
                </th>
              );
            })}
          </tr>
        </thead>
        <tbody>
          {moments.map((moment) => {
            const [name, ...cells] = stabilityCells(moment, units);
            return (
              <tr key={moment.which}>
                <th scope="row">{name}</th>
                {cells.map((cell, i) => (
                  <td key={stabilityHeads(units)[i + 1]}>{cell}</td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
