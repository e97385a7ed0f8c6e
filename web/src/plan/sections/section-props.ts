import type { UnitSystem } from "@delaywright/documents";
import type { PlanAnswer } from "../../compute/index.js";
import type { NextAct } from "../../standing/next-act.js";
import type { PlanDocuments } from "../../standing/plan-documents.js";
import type { WeatherAge } from "../../standing/weather-age.js";
import type { SectionState } from "../section-state.js";

/** What all sections of a plan are drawn from. */
export interface SectionsProps {
  /** Higher than that of all that the sections were drawn from before. */
  readonly order: number;
  readonly documents: PlanDocuments;
  readonly answer: PlanAnswer;
  readonly states: readonly SectionState[];
  readonly age: WeatherAge | null;
  readonly next: NextAct | null;
  readonly units: UnitSystem;
}

/** What one section is drawn from. `next` is told to the section of the delay alone, which shows the way to the cut. */
export interface SectionProps extends Omit<SectionsProps, "order" | "states"> {
  readonly state: SectionState;
}

/** How far the figures of a picture are to be trusted. */
export type PictureState = "settling" | "settled" | "stale";

interface Pictured {
  readonly answer: Pick<PlanAnswer, "settling" | "pictured">;
  readonly age: Pick<WeatherAge, "stale"> | null;
}

/** Pictures of the figures settle with the answer, and fade with the reading of the wind. */
export function pictureState({ answer, age }: Pictured): PictureState {
  if (answer.settling) return "settling";
  return age?.stale === true ? "stale" : "settled";
}

/** Pictures of the flights themselves come later than the answer: until then those of the last one stand. */
export function flightState(props: Pictured): PictureState {
  return props.answer.pictured ? pictureState(props) : "settling";
}
