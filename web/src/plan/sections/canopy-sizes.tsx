import { amountIn, type DecisionData, sizeWords, type UnitSystem } from "@delaywright/documents";
import { More } from "../../parts/index.js";

interface CanopySizesProps {
  readonly packing: DecisionData["packing"];
  readonly units: UnitSystem;
}

/** Diameter of each type of canopy for the landing speed that is wanted: as one, as two, as three. */
export function CanopySizes({ packing, units }: CanopySizesProps) {
  const { canopy, options } = packing;
  const alone = canopy.sizes.filter(({ count }) => count === 1);
  return (
    <More title={`Canopies that land it at ${amountIn(options.landingSpeed, "speed", units)}`} aside="by type">
      <table className="sheet-facts sheet-canopies">
        <caption className="quiet">
          Nominal diameter of each: of the circle with its whole area. The range is that of the handbook's drag
          coefficients.
        </caption>
        <thead>
          <tr>
            <th scope="col">type</th>
            <th scope="col">one</th>
            <th scope="col">two</th>
            <th scope="col">three</th>
          </tr>
        </thead>
        <tbody>
          {alone.map(({ shape, least, most }) => (
            <tr key={shape}>
              <th scope="row">
                {shape}{" "}
                <small>
                  one: {sizeWords(least, units)} to {sizeWords(most, units)}
                </small>
              </th>
              {canopy.sizes
                .filter((size) => size.shape === shape)
                .map(({ count, diameter }) => (
                  <td key={count}>{sizeWords(diameter, units)}</td>
                ))}
            </tr>
          ))}
        </tbody>
      </table>
    </More>
  );
}
