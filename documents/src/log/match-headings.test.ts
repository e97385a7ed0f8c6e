import { expect, test } from "vitest";
import { inventedFlight, logText } from "../../test/invented-log.js";
import { ready, taken } from "../../test/read-ready.js";
import { headingSays, headingUnit } from "./heading-words.js";

const flight = inventedFlight();

// headings are words of the field, no instrument's
const headings: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  ["English", ["Time [ms]", "Height AGL [ft]", "Pressure [kPa]"], ["time ms", "height ft", "pressure kPa"]],
  ["units behind signs", ["t/ms", "height_ft", "pressure: kPa"], ["time ms", "height ft", "pressure kPa"]],
  ["words run together", ["timeMs", "heightFt", "pressureKPa"], ["time ms", "height ft", "pressure kPa"]],
  ["German", ["Zeit in ms", "Höhe über Boden (ft)", "Luftdruck (kPa)"], ["time ms", "height ft", "pressure kPa"]],
  ["French", ["temps (ms)", "hauteur (ft)", "pression (kPa)"], ["time ms", "height ft", "pressure kPa"]],
  ["Spanish", ["tiempo (ms)", "altura (ft)", "presión (kPa)"], ["time ms", "height ft", "pressure kPa"]],
  ["Italian", ["tempo (ms)", "altezza (ft)", "pressione (kPa)"], ["time ms", "height ft", "pressure kPa"]],
  ["Swedish", ["tid (ms)", "höjd (ft)", "tryck (kPa)"], ["time ms", "height ft", "pressure kPa"]],
  ["no units", ["time", "height", "pressure"], ["time ms", "height ft", "pressure kPa"]],
  ["words of no language", ["q1", "q2", "q3"], ["time ms", "height ft", "pressure kPa"]],
];

test.each(headings)("readLog() tells columns by headings: %s", (_, names, expected) => {
  const text = logText(flight, [
    [names[0]!, ({ time }) => 1000 * time, 0],
    [names[1]!, ({ height }) => height / 0.3048],
    [names[2]!, ({ pressure }) => pressure / 1000, 4],
  ]);
  const read = ready(text);
  expect(taken(read)).toEqual(expected);
  expect(read.samples.time.at(-1)).toBeCloseTo(flight.at(-1)!.time, 9);
  const far = read.samples.height!.reduce((most, each, k) => Math.max(most, Math.abs(each - flight[k]!.height)), 0);
  expect(far).toBeLessThan(0.002);
});

const says: readonly (readonly [string, string | null, string | null])[] = [
  ["Altitude (feet AGL)", "altitude", "ft"],
  ["Vertikalgeschwindigkeit m/s", "speed", "m/s"],
  ["accel_m_s2", "acceleration", "m/s2"],
  ["v [V]", "battery", "V"],
  ["v", "speed", null],
  ["T (K)", "temperature", "K"],
  ["time_since_start_ms", "time", "ms"],
  ["p/hPa", "pressure", "hPa"],
  ["climb rate", "speed", null],
  ["pressure altitude (ft)", "altitude", "ft"],
  ["max altitude (m)", "other", null],
  ["lateral velocity", "other", null],
  ["drogue voltage", "other", null],
  ["gyro x", "other", null],
  ["parachute", null, null],
];

test.each(says)("headingSays() of %s", (heading, quantity, unit) => {
  const said = headingSays(heading).quantity;
  expect(said).toBe(quantity);
  if (said !== null && said !== "other" && said !== "marks") expect(headingUnit(heading, said)).toBe(unit);
});
