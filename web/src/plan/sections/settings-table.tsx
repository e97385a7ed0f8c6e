import {
  amountParts,
  delayColumn,
  delayNumber,
  delayWords,
  GLUE,
  holdsCell,
  howCell,
  percentCell,
  type SettingData,
} from "@delaywright/documents";
import { Button, Radio, RadioGroup } from "react-aria-components";
import type { Told } from "../../compute/index.js";
import { TextField } from "../../parts/index.js";
import { Strip } from "../../pictures/strip.js";
import { targetOf } from "../../standing/target.js";
import { setField } from "../../store/index.js";
import { pictureState, type SectionProps } from "./section-props.js";

/** Delays closer than this are the same [s]. */
const SAME = 1e-6;

const same = (a: number, b: number | undefined): boolean => b !== undefined && Math.abs(a - b) < SAME;

/** Every delay that can be made with its odds; the flyer may choose another than the suggestion. */
export function SettingsTable(props: SectionProps & { readonly told: Told }) {
  const { told, documents, units } = props;
  const { data } = told;
  const { path } = documents.plan;
  const target = targetOf(data);
  const rows = [...data.settings].sort((a, b) => b.delay - a.delay);
  const delays = delayColumn(rows.map(({ delay }) => delay));
  const choose = (value: string): void => {
    const setting = rows[Number(value)];
    if (setting !== undefined) chooseSetting(path, setting, told);
  };
  const at = rows.findIndex((setting) => same(setting.delay, target?.delay));
  return (
    <>
      <RadioGroup
        className="settings"
        aria-label="The delay to go for"
        value={at < 0 ? null : String(at)}
        onChange={choose}
        isDisabled={rows.length < 2}
      >
        <table>
          <thead>
            <tr>
              <th scope="col">delay</th>
              <th scope="col">cut</th>
              <th scope="col" className="strip">
                outcomes of 100
              </th>
              <th scope="col" className="n">
                clean %
              </th>
              <th scope="col" className="n wide">
                holds %
              </th>
              <th scope="col" className="n wide">
                half open
                <br />
                below
              </th>
              <th scope="col" className="n wide">
                9 in 10
                <br />
                below
              </th>
              <th scope="col" className="n wide">
                9 in 10
                <br />
                above
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((setting, i) => (
              <tr key={setting.delay} className={i === at ? "mine" : ""}>
                <td className="pick">
                  <Radio value={String(i)} className="settings-radio">
                    <i aria-hidden="true" />
                    {delays[i]}
                    {GLUE}s
                    {same(setting.delay, data.toCut?.delay) && <span className="hidden">, the delay to cut</span>}
                  </Radio>
                </td>
                <td className="how">
                  {howWords(setting, data.given.removedDepth)}
                  {same(setting.delay, data.toCut?.delay) && data.choice !== null && <small>the delay to cut</small>}
                </td>
                <td className="strip">
                  <Strip
                    odds={setting.odds}
                    height={14}
                    of={`at ${delayWords(setting.delay)}`}
                    stale={pictureState(props) === "stale"}
                  />
                </td>
                <td className="n">{percentCell(setting.odds.clean)}</td>
                <td className="n wide">{holdsCell(setting.odds.holds)}</td>
                <td className="n wide">{cell(setting.openingSpeed.p50, "speed", units)}</td>
                <td className="n wide">{cell(setting.openingSpeed.p90, "speed", units)}</td>
                <td className="n wide">{cell(setting.openingHeight.p10, "distance", units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </RadioGroup>
      <p className="quiet settings-units">
        Speeds in {amountParts(0, "speed", units).unit}, heights above the pad in{" "}
        {amountParts(0, "distance", units).unit}.
      </p>
      {documents.plan.raw?.["choice"] !== undefined && <OwnChoice path={path} suggested={data.toCut?.delay} />}
    </>
  );
}

/** Why the flyer goes for another delay than the suggestion, and the way back to it. */
function OwnChoice({ path, suggested }: { readonly path: string; readonly suggested: number | undefined }) {
  return (
    <div className="settings-own">
      <TextField path={path} field="choice.reason" label="Why this delay" />
      <Button className="act" onPress={() => setField(path, "choice", undefined, "choice of a delay")}>
        Back to {suggested === undefined ? "the suggestion" : delayWords(suggested)}
      </Button>
    </div>
  );
}

function chooseSetting(path: string, { delay }: SettingData, { data }: Told): void {
  const label = "choice of a delay";
  if (same(delay, data.toCut?.delay)) setField(path, "choice", undefined, label);
  else setField(path, "choice.delay", `${delayText(delay)} s`, label);
}

/** A delay as it is written into the plan: short where that is the same delay, exact elsewhere. */
function delayText(delay: number): string {
  const short = delayNumber(delay);
  return same(delay, Number(short)) ? short : String(delay);
}

function howWords(setting: SettingData, removedDepth: number | null): string {
  const how = howCell(setting, removedDepth);
  return setting.removed > SAME && how !== "as it is now"
    ? `${delayWords(setting.removed)} out${how === "" ? "" : `, ${how}`}`
    : how;
}

function cell(value: number | null, measure: "speed" | "distance", units: SectionProps["units"]): string {
  return value === null ? "–" : amountParts(value, measure, units).figure;
}
