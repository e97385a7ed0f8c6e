import { writeFileSync } from "node:fs";
import { normal } from "../../scripts/seeded.mjs";

/** Two hours and a bit at 128 samples a second, the flight an hour in. */
const ROWS = 1_000_000;
const RATE = 128;
const LIFT_OFF = 3600;

const GRAVITY = 9.81;

/** Invented: no rocket flew this. A straight climb under thrust, a coast against drag, a fall under a parachute; a row a sample. */
function inventedFlight() {
  const [thrust, burn, drag, delay, fall] = [120, 1.2, 0.0012, 9.5, 6];
  const rows = [];
  let [height, speed] = [0, 0];
  for (let i = 0; i === 0 || height > 0; i += 1) {
    const time = i / RATE;
    const opened = time > burn + delay;
    const acceleration = opened
      ? (-fall - speed) / 0.4
      : (time < burn ? thrust : 0) - GRAVITY - drag * speed * Math.abs(speed);
    rows.push({ height, speed, acceleration: Math.max(-160, acceleration) + GRAVITY });
    speed += acceleration / RATE;
    height += speed / RATE;
  }
  return rows;
}

/**
 * Writes a log of a million rows in six columns, the same every time.
 *
 * @param file path of the file
 */
export function writeLongLog(file) {
  const flight = inventedFlight();
  const ground = { height: 0, speed: 0, acceleration: GRAVITY };
  const noise = normal(20_261);
  const parts = ["Time (s),Height (m),Speed (m/s),Acceleration (m/s2),Pressure (hPa),Battery (V)\n"];
  for (let i = 0; i < ROWS; i += 1) {
    const { height, speed, acceleration } = flight[i - LIFT_OFF * RATE] ?? ground;
    const felt = height + 0.3 * noise();
    const pressure = 1013.25 * (1 - 2.25577e-5 * felt) ** 5.25588;
    const motion = `${felt.toFixed(2)},${(speed + 0.1 * noise()).toFixed(2)},${(acceleration + 0.3 * noise()).toFixed(2)}`;
    parts.push(`${(i / RATE).toFixed(4)},${motion},${pressure.toFixed(2)},${(9.2 - i / ROWS).toFixed(2)}\n`);
  }
  writeFileSync(file, parts.join(""));
}
