import { expect, test } from "vitest";
import { referenceRocket } from "../../../reference/trajectories/inputs.js";
import { mountFit } from "./mount-fit.js";

const mount = { diameter: 0.038, length: 0.32, motorAftAt: 1.2 };
const rocket = { ...referenceRocket, mount };
const codes = (diameter: number, length: number, inside: Parameters<typeof mountFit>[0] = rocket) => {
  const { refusals, looks } = mountFit(inside, { diameter, length });
  return [...refusals, ...looks].map(({ code, value, limit }) => [code, value, limit]);
};

test("mountFit() takes a motor of the mount's own size, and refuses what is a micrometre or two larger", () => {
  expect(codes(0.038, 0.32)).toEqual([]);
  expect(codes(0.0380005, 0.3200005)).toEqual([]);
  expect(codes(0.038002, 0.32)).toEqual([["too-wide-for-mount", 0.038002, 0.038]]);
  expect(codes(0.038, 0.320002)).toEqual([["too-long-for-mount", 0.320002, 0.32]]);
  expect(codes(0.054, 0.4).map(([code]) => code)).toEqual(["too-wide-for-mount", "too-long-for-mount"]);
});

test("mountFit() holds a motor against the way to the nose where the mount's length is not known", () => {
  const { length: _, ...open } = mount;
  expect(codes(0.038, 1.2, { mount: open })).toEqual([]);
  expect(codes(0.038, 1.201, { mount: open })).toEqual([["too-long-for-mount", 1.201, 1.2]]);
});

test("mountFit() asks for an adapter where more than 2 mm are left around a motor, and refuses nothing", () => {
  expect(codes(0.036, 0.2)).toEqual([]);
  expect(codes(0.0359, 0.2)).toEqual([["adapter-needed", 0.0359, 0.038]]);
});
