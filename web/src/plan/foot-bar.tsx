import { memo } from "react";
import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import type { NextAct, SectionId } from "../standing/next-act.js";
import { follow, goToSection } from "./follow.js";
import type { SectionState } from "./section-state.js";

interface FootBarProps {
  readonly states: readonly SectionState[];
  readonly next: NextAct | null;
  readonly path: string;
}

/** On a phone: how far the sections have come, the way to them, and the next act. */
export const FootBar = memo(function FootBar({ states, next, path }: FootBarProps) {
  return (
    <div className="plan-foot">
      <div className="plan-marks" aria-hidden="true">
        {states.map(({ id, mark }) => (
          <i key={id} className={mark} />
        ))}
      </div>
      <div className="plan-foot-acts">
        <MenuTrigger>
          <Button className="act">Sections</Button>
          <Popover className="choice-list" placement="top start">
            <Menu aria-label="Sections" onAction={(key) => goToSection(String(key) as SectionId)}>
              {states.map(({ id, title, aside }) => (
                <MenuItem key={id} id={id} className="choice-item plan-jump" textValue={title}>
                  <span>{title}</span> <small>{aside}</small>
                </MenuItem>
              ))}
            </Menu>
          </Popover>
        </MenuTrigger>
        {next !== null && (
          <Button className="next-act" onPress={() => follow(next, path)}>
            {next.short}
          </Button>
        )}
      </div>
    </div>
  );
});
