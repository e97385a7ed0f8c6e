import {
  type DeskAssumption,
  type DeskFields,
  deskIssue,
  deskPlan,
  type Issue,
  type PlacedMotor,
  type Raw,
} from "@delaywright/documents";
import { useMemo, useState } from "react";
import { useAsideAnswer } from "../compute/index.js";
import type { PlanAnswer } from "../compute/told.js";
import { dayOf } from "../standing/day.js";
import { type Entry, useEntries } from "../store/index.js";
import { movedTo, plansFor, surroundingsOf } from "./surroundings.js";
import { useMotor } from "./use-motor.js";

export type Typed = Readonly<Partial<Record<keyof DeskFields, string>>>;

/** The card desk as it stands. Nothing of it is in the store. */
export interface Desk {
  readonly way: "typed" | "code";
  readonly setWay: (way: Desk["way"]) => void;
  readonly typed: Typed;
  readonly type: (field: keyof DeskFields, text: string) => void;
  readonly electronics: boolean;
  readonly setElectronics: (on: boolean) => void;
  /** Path of a motor of the library; empty: its label's figures. */
  readonly motor: string;
  readonly setMotor: (path: string) => void;
  /** The chosen motor cannot be read. */
  readonly motorWrong: boolean;
  /** Path of the plan whose field and weather are meant; empty: none. */
  readonly around: string;
  readonly setAround: (path: string) => void;
  readonly plans: readonly (Entry & { readonly raw: Raw })[];
  /** The plan of a code that was read. */
  readonly setRead: (plan: Raw | null) => void;
  readonly read: Raw | null;
  /** The plan that it comes to; null while something is missing or wrong. */
  readonly document: Raw | null;
  readonly issues: readonly Issue[];
  readonly assumptions: readonly DeskAssumption[];
  readonly path: string;
  readonly answer: PlanAnswer;
  /** An answer was asked for since the page was opened. */
  readonly asked: boolean;
}

/** Another flyer's card: what is typed or read of it, and what it comes to. */
export function useDesk(): Desk {
  const entries = useEntries();
  const plans = useMemo(() => plansFor(entries, dayOf(new Date())), [entries]);
  const [way, setWay] = useState<Desk["way"]>("typed");
  const [typed, setTyped] = useState<Typed>({});
  const [electronics, setElectronics] = useState(false);
  const [motor, setMotor] = useState("");
  const [read, setRead] = useState<Raw | null>(null);
  const [chosen, setChosen] = useState<Readonly<Partial<Record<Desk["way"], string>>>>({});
  const placed = useMotor(motor);
  const [first] = plans;
  const today = first?.raw["date"] === dayOf(new Date()) ? first.path : "";
  const around = chosen[way] ?? (way === "typed" ? today : "");
  const place = plans.find(({ path }) => path === around);
  const surroundings = useMemo(() => place && surroundingsOf(place.raw, entries), [place, entries]);
  const made = useMemo(
    () => deskPlan({ ...typed, ...surroundings, ...(electronics && { electronics }), ...motorOf(placed) }),
    [typed, surroundings, electronics, placed],
  );
  const motorWrong = motor !== "" && placed === undefined;
  const document = useMemo(() => {
    if (way === "typed") return motorWrong ? null : made.document;
    return read === null || surroundings === undefined ? read : movedTo(read, surroundings);
  }, [way, motorWrong, made, read, surroundings]);
  const { path, answer } = useAsideAnswer(document);
  const joint = document === null ? [] : answer.issues;
  return {
    way,
    setWay,
    typed,
    type: (field, text) => setTyped((before) => ({ ...before, [field]: text })),
    electronics,
    setElectronics,
    motor,
    setMotor,
    motorWrong,
    around,
    setAround: (plan) => setChosen((before) => ({ ...before, [way]: plan })),
    plans,
    setRead,
    read,
    document,
    issues: way === "typed" ? [...made.issues, ...joint.map(deskIssue)] : joint,
    assumptions: way === "typed" ? made.assumptions : [],
    path,
    answer,
    asked: answer.told !== null || document !== null,
  };
}

function motorOf(placed: PlacedMotor | undefined) {
  return placed === undefined ? {} : { motor: { document: placed.document, thrust: placed.thrust } };
}
