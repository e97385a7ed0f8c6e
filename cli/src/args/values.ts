import { type Dimension, parseQuantity } from "@delaywright/documents";
import { UsageError } from "./usage.js";

/** A quantity with its unit, as typed after an option. */
export function quantityOf(option: string, text: string, dimension: Dimension, example: string): number {
  const parsed = parseQuantity(text, dimension, example);
  if (parsed.ok) return parsed.value;
  throw new UsageError(
    `${option}: ${JSON.stringify(text)} found; ${parsed.issue.accepted} is accepted, for example ${parsed.issue.example}`,
  );
}

/** As `quantityOf`, from zero up. */
export function positiveOf(option: string, text: string, dimension: Dimension, example: string): number {
  const value = quantityOf(option, text, dimension, example);
  if (value >= 0) return value;
  throw new UsageError(
    `${option}: ${JSON.stringify(text)} found; nothing below zero is accepted, for example ${example}`,
  );
}

/** A whole number within bounds. */
export function wholeOf(option: string, text: string, least: number, most: number): number {
  const value = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw new UsageError(
    `${option}: ${JSON.stringify(text)} found; a whole number from ${least} to ${most} is accepted, for example ${Math.max(least, 1)}`,
  );
}

/** How the body turns in the wind. */
export function modelOf(text: string): "pitching" | "aligned" {
  if (text === "pitching" || text === "aligned") return text;
  const word = text === "rigid" ? "the rigid model does not exist yet" : `${JSON.stringify(text)} found`;
  throw new UsageError(`--model: ${word}; pitching or aligned is accepted, for example --model pitching`);
}

/** As `quantityOf`, above zero. */
export function aboveZeroOf(option: string, text: string, dimension: Dimension, example: string): number {
  const value = quantityOf(option, text, dimension, example);
  if (value > 0) return value;
  throw new UsageError(`${option}: ${JSON.stringify(text)} found; more than zero is accepted, for example ${example}`);
}

/** Time between rows of a trajectory. */
export function everyOf(text: string): number {
  const value = aboveZeroOf("--every", text, "time", "0.05s");
  if (value >= 0.001) return value;
  throw new UsageError(`--every: ${JSON.stringify(text)} found; 0.001 s or more is accepted, for example 0.05s`);
}
