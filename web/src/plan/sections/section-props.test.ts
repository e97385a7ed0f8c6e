import { expect, test } from "vitest";
import { flightState, pictureState } from "./section-props.js";

test("pictures of the flights settle once they are of the answer that is shown", () => {
  const age = { stale: false };
  const settled = { settling: false, pictured: true };
  expect(flightState({ answer: settled, age })).toBe("settled");
  expect(flightState({ answer: settled, age: { stale: true } })).toBe("stale");
  const ahead = { answer: { settling: false, pictured: false }, age };
  expect(flightState(ahead)).toBe("settling");
  expect(pictureState(ahead)).toBe("settled");
});
