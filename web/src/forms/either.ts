import type { Keyed } from "../parts/field-path.js";
import type { Branch } from "./model.js";

/** The branch that holds: the one picked where the object leaves it open, else the first that fits. */
export function branchOf(
  whole: Keyed,
  branches: readonly Branch[],
  picked: string | undefined,
  undecided: boolean,
): Branch | undefined {
  const fitting = branches.filter((branch) => branch.matches(whole));
  const chosen = fitting.find((branch) => branch.id === picked) ?? fitting[0];
  return chosen ?? (undecided ? undefined : branches[0]);
}

function keysOf(branch: Branch | undefined): readonly string[] {
  return branch === undefined ? [] : [...branch.keys, ...Object.keys(branch.start ?? {})];
}

function only(whole: Keyed, keys: readonly string[]): Keyed {
  return Object.fromEntries(Object.entries(whole).filter(([key]) => keys.includes(key)));
}

/**
 * Goes from one way of saying a thing to another: what only the first could say is set aside, what both can say stays,
 * what was set aside for the second comes back.
 *
 * @param whole the object as it is
 * @param from the branch that held
 * @param to the branch that shall hold
 * @param kept what was set aside for it earlier
 * @returns the object from now on, and what is to be kept for `from`
 */
export function switchBranch(
  whole: Keyed,
  from: Branch | undefined,
  to: Branch,
  kept: Keyed = {},
): { readonly whole: Keyed; readonly aside: Keyed } {
  const aside = only(whole, keysOf(from));
  const bare = Object.fromEntries(Object.entries(whole).filter(([key]) => !keysOf(from).includes(key)));
  let next: Keyed = { ...bare, ...to.start };
  for (const key of to.keys) {
    for (const value of [aside[key], kept[key]]) {
      const tried = { ...next, [key]: value };
      if (value === undefined || !to.matches(tried)) continue;
      next = tried;
      break;
    }
  }
  return { whole: next, aside };
}
