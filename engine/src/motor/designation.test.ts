import { expect, test } from "vitest";
import { parseDesignation } from "./designation.js";

test.each([
  ["H150-14", { letter: "H", averageThrust: 150, delay: 14 }],
  ["H150", { letter: "H", averageThrust: 150, delay: null }],
  ["K550-P", { letter: "K", averageThrust: 550, delay: "plugged" }],
  ["1/2A3-2", { letter: "1/2A", averageThrust: 3, delay: 2 }],
  [" h150x-14a ", { letter: "H", averageThrust: 150, delay: 14 }],
  ["D2.5-0", { letter: "D", averageThrust: 2.5, delay: 0 }],
])("parseDesignation() reads %s", (text, expected) => {
  expect(parseDesignation(text)).toEqual(expected);
});

test.each(["", "H", "150-14", "H-14", "H150-", "H150-X", "1/3A5-2", "HH150", "H150-14-2", "H 150"])(
  "parseDesignation() is null for '%s'",
  (text) => {
    expect(parseDesignation(text)).toBeNull();
  },
);
