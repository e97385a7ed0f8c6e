import { expect, test } from "vitest";
import { distanceToEdge, distanceToLines } from "./ground-distance.js";

const square = [
  { east: -30, north: -40 },
  { east: 70, north: -40 },
  { east: 70, north: 100 },
  { east: -30, north: 100 },
];

test("distanceToEdge() is the way to the nearest edge, and none from outside", () => {
  expect(distanceToEdge({ kind: "circle", east: 30, north: 40, radius: 200 })).toBeCloseTo(150, 12);
  expect(distanceToEdge({ kind: "circle", east: 300, north: 0, radius: 200 })).toBe(0);
  expect(distanceToEdge({ kind: "polygon", points: square })).toBeCloseTo(30, 12);
  const away = square.map(({ east, north }) => ({ east: east + 500, north }));
  expect(distanceToEdge({ kind: "polygon", points: away })).toBe(0);
});

test("distanceToEdge() sees the edge that closes a polygon", () => {
  // the last edge runs along west, 30 m away; all others are further
  const [a, b, c, d] = square as [(typeof square)[0], (typeof square)[0], (typeof square)[0], (typeof square)[0]];
  for (const points of [
    [a, b, c, d],
    [b, c, d, a],
    [d, c, b, a],
  ])
    expect(distanceToEdge({ kind: "polygon", points })).toBeCloseTo(30, 12);
});

test("distanceToLines() is the way to the nearest point of any line", () => {
  // the foot of the perpendicular from the pad onto the line 3 x + 4 y = 250 lies 50 m away: 250/√(3² + 4²)
  const line = [
    { east: 90, north: -5 },
    { east: -30, north: 85 },
  ];
  expect(distanceToLines([line])).toBeCloseTo(50, 12);
  // beyond its end the end counts
  expect(distanceToLines([[line[0]!, { east: 130, north: -35 }]])).toBeCloseTo(Math.hypot(90, 5), 12);
  expect(distanceToLines([line, [{ east: 3, north: 4 }]])).toBeCloseTo(5, 12);
  expect(distanceToLines([[line[0]!, line[0]!]])).toBeCloseTo(Math.hypot(90, 5), 12);
  expect(distanceToLines([])).toBeUndefined();
  expect(distanceToLines([[]])).toBeUndefined();
});
