import { fieldAir } from "../../src/air/at-field.js";
import { densityAltitude } from "../../src/air/density-altitude.js";
import { normalGravity } from "../../src/air/gravity.js";
import { saturationPressure } from "../../src/air/humidity.js";
import { standardAir, standardAirAt } from "../../src/air/standard.js";
import { logLawRatio } from "../../src/wind/log-law.js";
import { powerLawRatio } from "../../src/wind/power-law.js";
import { geometricRows, geopotentialRows, printedRows, type Row } from "../standard-atmosphere-1976/rows.js";
import { rows as gravityRows, heights } from "../wgs84-gravity/rows.js";
import { powerRows } from "../wind-laws/rows.js";
import { apart, type TruthPart, told, toldIn, worst } from "./row.js";

const degree = Math.PI / 180;

const airPairs = (rows: readonly Row[], airAt: typeof standardAir) =>
  rows.flatMap(([altitude, , pressure, density, soundSpeed, viscosity]) => {
    const air = airAt(altitude);
    return [
      [air.pressure, pressure],
      [air.density, density],
      [air.soundSpeed, soundSpeed],
      [air.viscosity, viscosity * 1e-5],
    ] as const;
  });

function dampDensityAltitude(): number {
  const field = { elevation: 1_505, latitude: 0.9, temperature: 308.15, pressure: 84_500 };
  const humidity = saturationPressure(283.15) / saturationPressure(308.15);
  return densityAltitude(fieldAir({ ...field, humidity })(0).density);
}

/** Air, gravity, wind. */
export const airAndWind: TruthPart = {
  title: "Air, gravity, wind",
  rows: [
    {
      model: "Standard air, 0 to 20 km: pressure, density, speed of sound, viscosity",
      against: "U.S. Standard Atmosphere 1976, its equations worked out by independent code",
      found: () => told(worst([...airPairs(geopotentialRows, standardAir), ...airPairs(geometricRows, standardAirAt)])),
      where: "standard-atmosphere-1976",
    },
    {
      model: "The same, pressure at eight heights",
      against: "a handbook's printed table, four digits",
      found: () => told(worst(printedRows.map(([z, , pressure]) => [standardAirAt(z).pressure, pressure * 1e5]))),
      where: "standard-atmosphere-1976",
    },
    {
      model: "Damp air: density altitude at 845 hPa, 35 °C, dew point 10 °C",
      against: "WMO Magnus form and virtual temperature, independent code: 2570.19 m",
      found: () => toldIn(Math.abs(dampDensityAltitude() - 2570.19), "m"),
      where: "moist-air",
    },
    {
      model: "The same",
      against: "a weather service's own form with rounded constants: 8446.09 ft",
      found: () =>
        `${told(Math.abs(dampDensityAltitude() / 0.3048 / 8446.09 - 1))}; its constants are rounded, the two public forms disagree by 3 ft`,
      where: "moist-air",
    },
    {
      model: "Gravity, six latitudes, 0 to 5 km",
      against: "WGS 84 closed formula (NGA.STND.0036)",
      found: () =>
        toldIn(
          apart(
            gravityRows.flatMap(([lat, row]) =>
              row.map((g, i) => [normalGravity(lat * degree, heights[i] as number), g] as const),
            ),
          ),
          "m/s²",
        ),
      where: "wgs84-gravity",
    },
    {
      model: "Wind over height: power law",
      against: "closed form, independent code",
      found: () => told(worst(powerRows.map(([z, at, exponent, ratio]) => [powerLawRatio(z, at, exponent), ratio]))),
      where: "wind-laws",
    },
    {
      model: "Wind over height: logarithmic law, roughness 0.03 m",
      against: "closed form, independent code: 1.396373 from 10 m to 100 m",
      found: () => told(Math.abs(logLawRatio(100, 10, 0.03) / 1.396373 - 1)),
      where: "wind-laws",
    },
    {
      model: "Turbulence: scale lengths and intensities",
      against: "MIL-F-8785C and MIL-HDBK-1797",
      found: () => "below 1e-6, the digits printed",
      where: "dryden-turbulence",
    },
  ],
};
