import {
  bayChargeSentences,
  cautions,
  chargeCaveatSentences,
  chargeStops,
  chargeStopWords,
  motorChargeSentences,
  staticPortSentence,
} from "@delaywright/documents";
import type { ChargeData } from "./answer.js";
import { bullet, wrap } from "./wrap.js";

/** The charge for a person: what it takes, what the motor's own does, the ports, and the cautions where the hazard is. */
export function chargeText({ rocket, motor, bay, staticPorts }: ChargeData): string {
  const stop = chargeStops(bay) ? [`STOP: ${chargeStopWords}: see below.`] : [];
  const own = motorChargeSentences(bay);
  const sections = [
    ...stop,
    listed(`Ejection charge of ${rocket}`, bayChargeSentences(bay)),
    ...(motor === null
      ? []
      : [listed(`${motor} in it`, own.length === 0 ? ["This motor has no ejection charge."] : own)]),
    ...(staticPorts === null ? [] : [wrap(staticPortSentence(staticPorts))]),
    listed("What is not in it", chargeCaveatSentences(bay)),
    ["Before you load it", ...[...cautions.charge, ...cautions.retention].map(bullet)].join("\n"),
    cautions.authority.map((line) => wrap(line)).join("\n"),
  ];
  return `${sections.join("\n\n")}\n`;
}

function listed(head: string, sentences: readonly string[]): string {
  return [wrap(head), ...sentences.map((sentence) => wrap(sentence, "  ", "    "))].join("\n");
}
