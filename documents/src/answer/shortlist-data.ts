import type {
  Aim,
  CandidateFigures,
  JudgedMotor,
  LaunchFigures,
  Limits,
  MotorCut,
  MotorLook,
  NotChecked,
  RankedMotor,
  Refusal,
  RefusalCode,
  RefusedMotor,
  Shortlist,
} from "@delaywright/engine";
import type { Issue } from "../issue.js";
import type { MotorName, MotorShelf } from "../shortlist/motor-shelf.js";
import type { OpenContext } from "../shortlist/open-plan.js";
import { type SettingData, settingData } from "./decision-data.js";

/** The delay to cut into one motor, with its odds. */
export interface MotorCutData extends SettingData, Pick<MotorCut, "reachesLeast" | "reachesHolds" | "why"> {}

/** One motor, SI units; figures that were not needed to refuse it are null. */
export interface MotorRowData extends MotorName, CandidateFigures {
  readonly file: string;
  readonly price: number | null;
  readonly launch: LaunchFigures | null;
  /** Of the top above the pad [m]. */
  readonly height: { readonly p05: number; readonly p50: number; readonly p95: number } | null;
  /** Null for a motor without delay, and where it was refused before. */
  readonly toCut: MotorCutData | null;
}

/** A motor that is not refused, with what asks for a look. */
export interface RankedData extends MotorRowData {
  readonly looks: readonly MotorLook[];
  readonly notChecked: readonly NotChecked[];
}

/** A refused motor with all its reasons, most weighty first. */
export interface RefusedData extends MotorRowData {
  readonly refusals: readonly Refusal[];
}

/** A motor that could not be judged. */
export interface UnjudgedData extends MotorName {
  readonly file: string;
  readonly issues: readonly Issue[];
}

/** A shortlist as plain data: SI units and codes. It survives a structured clone, and is what `shortlist --json` prints. */
export interface ShortlistData {
  readonly context: OpenContext;
  readonly aim: { readonly by: Aim["by"] /** [m] */; readonly height: number | null };
  readonly limits: Limits;
  readonly ranked: readonly RankedData[];
  readonly refused: readonly { readonly code: RefusalCode; readonly motors: readonly RefusedData[] }[];
  readonly unjudged: readonly UnjudgedData[];
  readonly seed: number;
  readonly draws: number;
  readonly model: Shortlist["model"];
}

function rowData({ id, price, figures, launch, drawn }: RankedMotor | RefusedMotor, name: MotorName): MotorRowData {
  return { file: id, ...name, price, ...figures, launch, height: drawn?.height ?? null, toCut: cutOf(drawn?.toCut) };
}

function cutOf(toCut: MotorCut | null | undefined): MotorCutData | null {
  if (toCut === null || toCut === undefined) return null;
  const { reachesLeast, reachesHolds, why } = toCut;
  return { ...settingData(toCut), reachesLeast, reachesHolds, why };
}

/**
 * One judged motor as plain data, for whoever shows rows as they come.
 *
 * @returns null for a motor that no flight can be computed from
 */
export function motorRowData(judged: JudgedMotor, names: MotorShelf["names"]): RankedData | RefusedData | null {
  if (judged.outcome === "broken") return null;
  const row = rowData(judged, nameIn(names, judged.id));
  return judged.outcome === "ranked"
    ? { ...row, looks: judged.looks, notChecked: judged.notChecked }
    : { ...row, refusals: judged.refusals };
}

function nameIn(names: MotorShelf["names"], id: string): MotorName {
  return names.get(id) ?? { name: id, maker: null, designation: null };
}

/**
 * A shortlist as plain data.
 *
 * @param list as the engine gave it
 * @param shelf the motors that it was asked about
 * @param context names of the plan
 * @param limits of the plan
 * @example
 * shortlistData(list, shelf, opened.context, opened.plan.limits).ranked[0]?.name; // "Demo H146"
 */
export function shortlistData(
  list: Shortlist,
  shelf: Pick<MotorShelf, "names" | "unread">,
  context: OpenContext,
  limits: Limits,
): ShortlistData {
  const { aim, seed, draws, model } = list;
  const broken = list.broken.map(({ id, issues }): UnjudgedData => {
    const told = issues.map(({ code, path, found, accepted }) => {
      return { file: id, path, code, found: String(found), accepted, example: "" };
    });
    return { file: id, ...nameIn(shelf.names, id), issues: told };
  });
  return {
    context,
    aim: { by: aim.by, height: aim.by === "nearest-height" ? aim.height : null },
    limits,
    ranked: list.ranked.map((each) => {
      const { looks, notChecked } = each;
      return { ...rowData(each, nameIn(shelf.names, each.id)), looks, notChecked };
    }),
    refused: list.refused.map(({ code, motors }) => ({
      code,
      motors: motors.map((each) => ({ ...rowData(each, nameIn(shelf.names, each.id)), refusals: each.refusals })),
    })),
    unjudged: [...shelf.unread, ...broken],
    seed,
    draws,
    model,
  };
}
