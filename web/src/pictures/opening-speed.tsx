import type { ReactNode } from "react";
import { type DelayPictureData, delayModel } from "./odds-model.js";
import { oddsTable, speedDescription } from "./odds-words.js";
import { Picture } from "./picture.js";
import { SpeedPanel, speedHeight } from "./speed-panel.js";
import "./odds-by-delay.css";

export interface OpeningSpeedProps extends DelayPictureData {
  /** Adds the figures as a hidden table: where no table stands beside the picture. */
  readonly withTable?: boolean;
}

/**
 * The airspeed at opening over the delay, alone: on the same axis as `OddsByDelay` draws it of the same data.
 *
 * @example
 * <OpeningSpeed settings={told.data.settings} curve={pictures.curve} … />
 */
export function OpeningSpeed({ withTable = false, ...data }: OpeningSpeedProps): ReactNode {
  const words = delayModel(data, 800, 1);
  return (
    <Picture
      name="opening-speed"
      title="Opening speed by delay"
      description={speedDescription(words)}
      table={withTable ? oddsTable(words, data.units) : undefined}
      firstWidth={784}
      draw={({ width, grow, id }) => {
        const model = delayModel(data, width, grow);
        return { height: speedHeight(model), marks: <SpeedPanel model={model} from={0} id={id} /> };
      }}
    />
  );
}
