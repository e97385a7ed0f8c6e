import { type CardCode, type CardData, cardCode, cardData } from "@delaywright/documents";
import { useEffect, useState } from "react";
import type { PlanAnswer, Told } from "../compute/index.js";
import { dayOf, timeOfDay } from "../standing/day.js";
import { partsOfAnswer, settledOf } from "../standing/parts-of-answer.js";

/** What stands on the card of a plan, of its last settled answer. */
export interface KnownCard {
  readonly card: CardData;
  /** Null: the plan is too long for one. */
  readonly code: CardCode | null;
  /** Of the plan as it is now. */
  readonly current: boolean;
}

/** Version of the app. */
const version: string = import.meta.env["VITE_VERSION"] ?? "of no build";

async function cardOf(path: string, settled: Told): Promise<Pick<KnownCard, "card" | "code"> | null> {
  const parts = await partsOfAnswer(path, settled);
  if (parts === undefined) return null;
  const now = new Date();
  const computed = `${dayOf(now)} ${timeOfDay(now)}`;
  return { card: cardData({ data: settled.data, parts, computed, version }), code: await cardCode(parts) };
}

/**
 * The card of a plan, kept up to date while it is looked at; null until there is one.
 *
 * @param path of the plan
 * @param answer to it
 * @param looked somebody looks at it
 */
export function useCard(path: string, answer: PlanAnswer, looked: boolean): KnownCard | null {
  const [last, setLast] = useState<(Pick<KnownCard, "card" | "code"> & { readonly of: Told }) | null>(null);
  const settled = settledOf(answer);
  const wanted = looked ? settled : null;
  useEffect(() => {
    if (wanted === null) return;
    let left = false;
    void cardOf(path, wanted).then((made) => {
      if (!left && made !== null) setLast({ ...made, of: wanted });
    });
    return () => {
      left = true;
    };
  }, [path, wanted]);
  return last === null ? null : { card: last.card, code: last.code, current: last.of === settled };
}
