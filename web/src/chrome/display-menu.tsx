import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover } from "react-aria-components";
import { type Settings, useSettings } from "../store/index.js";

const themes: readonly (readonly [Settings["theme"], string])[] = [
  ["auto", "As the device"],
  ["light", "Light"],
  ["dark", "Dark"],
  ["sun", "Sunlight"],
];

const units: readonly (readonly [Settings["units"], string])[] = [
  ["metric", "Metres, millimetres"],
  ["imperial", "Feet, inches"],
];

/** How the bench is shown: theme and units. */
export function DisplayMenu() {
  const [settings, change] = useSettings();
  return (
    <MenuTrigger>
      <Button className="act">Display</Button>
      <Popover className="choice-list" placement="bottom end">
        <Menu aria-label="Display">
          <MenuSection
            selectionMode="single"
            disallowEmptySelection
            selectedKeys={[settings.theme]}
            onSelectionChange={(keys) => change({ theme: [...keys][0] as Settings["theme"] })}
          >
            <Header className="menu-head">Theme</Header>
            {themes.map(([id, word]) => (
              <MenuItem key={id} id={id} className="choice-item">
                {word}
              </MenuItem>
            ))}
          </MenuSection>
          <MenuSection
            selectionMode="single"
            disallowEmptySelection
            selectedKeys={[settings.units]}
            onSelectionChange={(keys) => change({ units: [...keys][0] as Settings["units"] })}
          >
            <Header className="menu-head">Units</Header>
            {units.map(([id, word]) => (
              <MenuItem key={id} id={id} className="choice-item">
                {word}
              </MenuItem>
            ))}
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
