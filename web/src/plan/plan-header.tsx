import { memo } from "react";
import { Button, ToggleButton, ToggleButtonGroup } from "react-aria-components";
import { addressOf } from "../app/router.js";
import { askRedo, askUndo } from "../parts/index.js";
import { timeOfDay } from "../standing/day.js";
import { type Settings, useSaving, useSettings, useStepLabel } from "../store/index.js";
import { SheetMenu } from "./sheet-menu.js";

/** Where and when the plan was last kept. */
export function savedWords({ state, at }: ReturnType<typeof useSaving>): string {
  if (state === "failed") return "not kept: see above";
  if (state === "upgraded-elsewhere") return "not kept: load the page again";
  if (at === null) return "kept on this device";
  return `saved ${timeOfDay(new Date(at))} on this device`;
}

/** The line above the answer: where one is, undo, and how the sheet is shown. */
export const PlanHeader = memo(function PlanHeader({ path, name }: { readonly path: string; readonly name: string }) {
  return (
    <header className="plan-top">
      <a href={addressOf({ page: "bench" })}>Bench</a>
      <h1>{name}</h1>
      <Saved />
      <span className="plan-push" />
      <UndoRedo />
      <UnitsChoice />
      <ThemeChoice />
      <Button className="act plan-wide" onPress={() => print()}>
        Print
      </Button>
      <a className="act plan-wide plan-pad" href={addressOf({ page: "pad", path })}>
        Pad view
      </a>
      <SheetMenu path={path} />
    </header>
  );
});

function Saved() {
  return <span className="plan-saved">{savedWords(useSaving())}</span>;
}

function UndoRedo() {
  const undo = useStepLabel("undo");
  const redo = useStepLabel("redo");
  return (
    <>
      <Button className="act" isDisabled={undo === undefined} onPress={askUndo} aria-label={undoWords("Undo", undo)}>
        Undo
      </Button>
      <Button
        className="act plan-wide"
        isDisabled={redo === undefined}
        onPress={askRedo}
        aria-label={undoWords("Redo", redo)}
      >
        Redo
      </Button>
    </>
  );
}

function undoWords(act: string, label: string | undefined): string {
  return label === undefined ? act : `${act}: ${label}`;
}

function UnitsChoice() {
  const [{ units }, change] = useSettings();
  return (
    <ToggleButtonGroup
      className="plan-group plan-wide"
      aria-label="Units"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[units]}
      onSelectionChange={(keys) => change({ units: [...keys][0] as Settings["units"] })}
    >
      <ToggleButton className="act" id="metric">
        mm
      </ToggleButton>
      <ToggleButton className="act" id="imperial">
        in
      </ToggleButton>
    </ToggleButtonGroup>
  );
}

function ThemeChoice() {
  const [{ theme }, change] = useSettings();
  return (
    <ToggleButtonGroup
      className="plan-group plan-wide"
      aria-label="Theme"
      selectionMode="single"
      selectedKeys={theme === "auto" ? [] : [theme]}
      onSelectionChange={(keys) => change({ theme: ([...keys][0] as Settings["theme"] | undefined) ?? "auto" })}
    >
      <ToggleButton className="act" id="light">
        Light
      </ToggleButton>
      <ToggleButton className="act" id="dark">
        Dark
      </ToggleButton>
      <ToggleButton className="act" id="sun">
        Sunlight
      </ToggleButton>
    </ToggleButtonGroup>
  );
}
