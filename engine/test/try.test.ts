import { test } from "vitest";
import { fly } from "/work/main/engine/src/flight/fly.js";
import { flightD, flightE, flightF, referenceInputs } from "/work/main/engine/reference/trajectories/inputs.js";
import { fastTables } from "/work/main/engine/src/flight/fast/tables.js";
import { createWork } from "/work/main/engine/src/flight/fast/work.js";
import { setDraw, nominalValues } from "/work/main/engine/src/flight/fast/draw.js";
import { fastFlight, emptyOutcome } from "/work/main/engine/src/flight/fast/fast-flight.js";
test("x", () => {
  const rk = { ...flightE, rocket: { ...flightE.rocket, drag: { from: "build-up", scale: 1 } as const } };
  for (const [n, inputs] of Object.entries({ a: referenceInputs, d: flightD, e: flightE, f: flightF, rk })) {
    const plain = fly(inputs);
    const w = createWork(fastTables(plain.model, 3000));
    const P = plain.events;
    for (const tol of [1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 1e-7]) {
      setDraw(w, nominalValues());
      const o = fastFlight(w, 1, 1, tol, emptyOutcome());
      const t0 = performance.now(); const N = 4000;
      for (let i = 0; i < N; i++) { setDraw(w, nominalValues()); fastFlight(w, 1, 1, tol, o); }
      const dt = performance.now() - t0;
      console.log(n, tol, o.flew, "dt_ap", (o.apogeeTime - P.apogee!.time).toExponential(2), "dh/h", ((o.apogeeHeight - P.apogee!.position[2]) / o.apogeeHeight).toExponential(2), "land", (o.landingTime - P.landing!.time).toExponential(2), (o.landingEast - P.landing!.position[0]).toFixed(3), "rec", o.recordCount, "calls", o.calls, "flights/s", (N / dt * 1000).toFixed(0));
    }
  }
});
