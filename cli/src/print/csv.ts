/** Rows as CSV: numbers with a point, one head line, fields that need it in quotes. */
export function csvText(heads: readonly string[], rows: Iterable<readonly (number | string)[]>): string {
  const lines = [heads.map(field).join(",")];
  for (const row of rows) lines.push(row.map(field).join(","));
  return `${lines.join("\n")}\n`;
}

function field(value: number | string): string {
  if (typeof value === "number") return Number.isFinite(value) ? String(Number(value.toPrecision(9))) : "";
  return /[",\n\r]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value;
}
