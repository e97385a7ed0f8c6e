import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { go } from "../app/router.js";
import { askRedo } from "../parts/index.js";
import { type Settings, useSettings, useStepLabel } from "../store/index.js";

const themes: readonly (readonly [Settings["theme"], string])[] = [
  ["auto", "Theme of the device"],
  ["light", "Light"],
  ["dark", "Dark"],
  ["sun", "Sunlight"],
];

/** On a phone: what stands in the line above the answer on a desk. */
export function SheetMenu({ path }: { readonly path: string }) {
  const [{ units, theme }, change] = useSettings();
  const redo = useStepLabel("redo");
  const act = (key: string | number): void => {
    const word = String(key);
    if (word === "redo") askRedo();
    else if (word === "units") change({ units: units === "metric" ? "imperial" : "metric" });
    else if (word === "print") print();
    else if (word === "pad") go({ page: "pad", path });
    else change({ theme: word as Settings["theme"] });
  };
  return (
    <MenuTrigger>
      <Button className="act plan-narrow">More</Button>
      <Popover className="choice-list" placement="bottom end">
        <Menu aria-label="More" onAction={act} disabledKeys={redo === undefined ? ["redo"] : []}>
          <MenuItem id="pad" className="choice-item">
            Pad view
          </MenuItem>
          <MenuItem id="redo" className="choice-item">
            Redo{redo === undefined ? "" : `: ${redo}`}
          </MenuItem>
          <MenuItem id="units" className="choice-item">
            {units === "metric" ? "Show feet and inches" : "Show metres and millimetres"}
          </MenuItem>
          {themes.map(([id, word]) => (
            <MenuItem key={id} id={id} className="choice-item">
              {word}
              {theme === id ? ", now" : ""}
            </MenuItem>
          ))}
          <MenuItem id="print" className="choice-item">
            Print
          </MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
