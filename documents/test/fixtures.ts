import { memoryFiles } from "../src/file-source.js";

/** A document that tests may bend. */
export type Loose = Record<string, unknown>;

export const rocket = {
  kind: "rocket",
  version: 1,
  name: "Demo rocket 76",
  diameter: "76 mm",
  length: "1.52 m",
  massWithoutMotor: "1.95 kg",
  balanceWithoutMotor: "0.86 m",
  inertiaWithoutMotor: "0.36 kg m2",
  nose: { shape: "ogive", length: "300 mm" },
  sections: [{ shape: "transition", at: "1.45 m", length: "70 mm", aftDiameter: "60 mm" }],
  fins: [
    {
      shape: "trapezoid",
      count: 3,
      at: "1.26 m",
      root: "180 mm",
      tip: "80 mm",
      span: "90 mm",
      sweep: "100 mm",
      thickness: "4 mm",
      leadingEdge: "round",
      trailingEdge: "square",
    },
  ],
  fittings: [
    { kind: "rail button", at: "0.95 m" },
    { kind: "rail button", at: "1.40 m" },
  ],
  roughness: "20 um",
  mount: { diameter: "38 mm", length: "320 mm", motorAftAt: "1.53 m", retention: "positive" },
  drag: { from: "build-up", scale: 1.0 },
  bay: { diameter: "72 mm", length: "250 mm", shearPins: [{ size: "2-56", count: 2 }], pressure: "15 psi" },
  recovery: {
    motorCharge: "primary",
    lineStretch: "0.5 s",
    main: { canopy: { shape: "hemispherical", diameter: "1.1 m" }, strength: "1.1 kN" },
    harness: { length: "5 m", strength: "1.3 kN" },
  },
};

export const motor = {
  kind: "motor",
  version: 1,
  name: "Demo H150",
  maker: "invented for the demo",
  designation: "H150-14",
  diameter: "38 mm",
  length: "205 mm",
  loadedMass: "330 g",
  propellantMass: "160 g",
  thrust: { time: [0, 0.02, 0.1, 1.6, 2.0, 2.1], newtons: [0, 120, 190, 150, 40, 0] },
  delay: {
    kind: "adjustable",
    longest: "14 s",
    mostRemoved: "8 s",
    leastLeft: "0 s",
    depthPerSecond: "1/32 in",
    clock: "burnout",
    instructions: { allowCutting: true, tool: "Two-collar cutter (demo)" },
    charge: "1.0 g",
    wellHolds: "1.4 g",
  },
};

export const motorInHand = {
  kind: "motor-in-hand",
  version: 1,
  name: "Bag 3",
  type: "demo-h150.motor.json",
  label: "3",
  lot: "L-17",
  made: "2025-03",
  stored: "indoors",
  readings: [{ when: "2026-05-02T10:12", before: "22.2 mm", after: "24.6 mm", end: "B", spacers: [], note: "" }],
};

export const tool = {
  kind: "tool",
  version: 1,
  name: "Two-collar cutter (demo)",
  ends: [
    { name: "A", removes: "6 s" },
    { name: "B", removes: "3 s" },
  ],
  spacers: [{ name: "ring", keepsBack: "1 s", count: 1 }],
  depthPerSecond: "1/32 in",
  depthError: "0.2 mm",
};

export const field = {
  kind: "field",
  version: 1,
  name: "Larkmoor",
  elevation: "210 m",
  latitude: "52.3 deg",
  ceiling: { height: "900 m", above: "ground" },
  boundary: { shape: "circle", radius: "400 m" },
  pad: { east: "0 m", north: "0 m" },
  keepOff: [
    {
      name: "car park",
      points: [
        ["120 m", "-40 m"],
        ["180 m", "-40 m"],
        ["180 m", "10 m"],
      ],
    },
  ],
  tiltSector: { from: "200 deg", to: "280 deg" },
};

export const plan = {
  kind: "plan",
  version: 1,
  name: "Demo rocket, third flight",
  date: "2026-05-02",
  rocket: "demo.rocket.json",
  motor: "demo-h150.motor.json",
  tool: "two-collar.tool.json",
  field: "larkmoor.field.json",
  weather: {
    temperature: "12 degC",
    pressure: "987 hPa",
    wind: "2 m/s",
    windFrom: "240 deg",
    measuredAt: "2 m",
    terrain: "open",
    taken: "10:40",
  },
  guide: { rail: "2.4 m", stop: "150 mm", tilt: "0 deg", toward: "240 deg" },
  ballast: { mass: "0 g", at: "200 mm" },
  limits: { openingSpeed: "20 m/s", openingHeight: "100 m", leastClean: 0.8, leastHolds: 0.99 },
  choice: { delay: "9 s", reason: "landing before the trees" },
  spread: { dragScale: 0.08, totalImpulse: 0.03 },
};

/** The plan and its files, some of them replaced or left out. */
export function demoFiles(changed: Readonly<Record<string, unknown>> = {}) {
  const documents: Record<string, unknown> = {
    "plan.json": plan,
    "demo.rocket.json": rocket,
    "demo-h150.motor.json": motor,
    "bag-3.json": motorInHand,
    "two-collar.tool.json": tool,
    "larkmoor.field.json": field,
    ...changed,
  };
  const present = Object.entries(documents).filter(([, value]) => value !== undefined);
  return memoryFiles(
    Object.fromEntries(
      present.map(([name, value]) => {
        const raw = typeof value === "string" || value instanceof Uint8Array;
        return [name, raw ? (value as string | Uint8Array) : JSON.stringify(value)];
      }),
    ),
  );
}

/** A deep copy with the value at a path replaced; undefined removes it. */
export function bent(document: unknown, path: readonly (string | number)[], value: unknown): Loose {
  const copy = structuredClone(document) as Loose;
  let here: Record<string | number, unknown> = copy;
  for (const key of path.slice(0, -1)) here = here[key] as Record<string | number, unknown>;
  const last = path.at(-1) ?? "";
  if (value === undefined) delete here[last];
  else here[last] = value;
  return copy;
}
