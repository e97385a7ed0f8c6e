import { expect, test } from "vitest";
import { keptDrafts } from "./kept-drafts.js";

const [one, two, three] = [{ root: "1 mm" }, { root: "2 mm" }, { root: "3 mm" }];
const before = { fins: [one, two, three], drag: { scale: 1 }, thrust: [0, 1, 2] };

test("keptDrafts moves the drafts of rows that were moved", () => {
  const drafts = { "fins[0].span": "x", "fins[1].root": "y", diameter: "z" };
  const after = { ...before, fins: [two, three, one] };
  expect(keptDrafts(drafts, before, after)).toEqual({ "fins[2].span": "x", "fins[0].root": "y", diameter: "z" });
});

test("keptDrafts drops the drafts of rows that are gone and of fields that have another value", () => {
  const drafts = { "fins[1].span": "x", "drag.scale": "y", "thrust[2]": "z" };
  expect(keptDrafts(drafts, before, { ...before, fins: [one, three] })).toEqual({
    "drag.scale": "y",
    "thrust[2]": "z",
  });
  expect(keptDrafts(drafts, before, { ...before, drag: { scale: 2 }, thrust: [0, 2] })).toEqual({
    "fins[1].span": "x",
  });
});

test("keptDrafts keeps the drafts of a row that was changed in place", () => {
  const after = { ...before, fins: [one, { root: "2 mm", span: "9 mm" }, three] };
  expect(keptDrafts({ "fins[1].root": "x", "fins[1].span": "y" }, before, after)).toEqual({ "fins[1].root": "x" });
});

test("keptDrafts keeps what is half typed in one limit of a rule when the other is taken away", () => {
  const club = { limits: { "wind-limit": { look: "4 m/s", stop: "6 m/s" } } };
  const drafts = { "limits.wind-limit.look": "5 m", "limits.wind-limit.stop": "7 m" };
  expect(keptDrafts(drafts, club, { limits: { "wind-limit": { look: "4 m/s" } } })).toEqual({
    "limits.wind-limit.look": "5 m",
  });
  expect(keptDrafts(drafts, club, { limits: {} })).toEqual({});
});

test("keptDrafts gives the same object where nothing is dropped", () => {
  const drafts = { diameter: "z" };
  expect(keptDrafts(drafts, before, { ...before })).toBe(drafts);
});
