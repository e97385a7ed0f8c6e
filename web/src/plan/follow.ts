import { go } from "../app/router.js";
import { bringIntoView, goWhenThere, REVEAL, revealField } from "../parts/index.js";
import type { NextAct, SectionId } from "../standing/next-act.js";

/** Goes to a section of the sheet: unfolds it on a phone and puts the reader there. */
export function goToSection(id: SectionId): void {
  goWhenThere(() => document.getElementById(id), goTo);
}

function goTo(place: HTMLElement): void {
  place.dispatchEvent(new CustomEvent(REVEAL, { bubbles: true }));
  bringIntoView(place, "start", matchMedia("(prefers-reduced-motion: reduce)").matches);
  const target = place.matches("h2") ? (place.querySelector("button") ?? place) : place;
  if (!target.hasAttribute("tabindex") && target.tagName !== "BUTTON") target.setAttribute("tabindex", "-1");
  target.focus({ preventScroll: true });
}

/** Does the next act: goes to the field or section where it is done. */
export function follow(act: NextAct, planPath: string): void {
  if (act.pad === true) {
    go({ page: "pad", path: planPath });
    return;
  }
  goToSection(act.section);
  if (act.field !== undefined) revealField(act.field.path, act.field.field);
}
