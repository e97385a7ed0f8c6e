import { airAndWind } from "./air-and-wind.js";
import { drag } from "./drag.js";
import { flight } from "./flight.js";
import { motor } from "./motor.js";
import { normalForce } from "./normal-force.js";
import type { TruthPart } from "./row.js";

const head = `# Table of truth

What each model was held against, and by how much it differs. The figures are measured when this page is made, and a test fails when the page
and the measurement part; _memory_ marks what was written down without a source at hand. "Not known" and "not explained" mean what they say.

Made anew by \`WRITE_TRUTH=1 npx vitest run --project engine reference/table-of-truth\`. Folders without a path lie in \`engine/reference\`, each with
its \`SOURCE.md\`.
`;

const place = (where: string) => (where === "–" || where.startsWith("`") ? where : `\`${where}\``);

function section({ title, rows }: TruthPart): string {
  const lines = rows.map(
    ({ model, against, found, where }) => `| ${model} | ${against} | ${found()} | ${place(where)} |`,
  );
  return [
    `## ${title}`,
    "",
    "| Model | Held against | Difference | Where |",
    "| --- | --- | --- | --- |",
    ...lines,
    "",
  ].join("\n");
}

/** The page as it should be. */
export function tableOfTruth(): string {
  return [head, ...[airAndWind, motor, normalForce, drag, flight].map(section)].join("\n");
}
