import "./notices.css";
import { useState } from "react";
import { Button } from "react-aria-components";
import { ExportAct } from "../exchange/export-act.js";
import { takeUpdate, useUpdate } from "../offline/update.js";
import { Notice } from "../parts/index.js";
import { retrySaving, useListing, useSaving } from "../store/index.js";
import { failureWords, memoryWords } from "./notice-words.js";

/** What concerns the whole bench: changes that are not kept, and a newer version of the app. */
export function Notices() {
  return (
    <div className="notices">
      <SavingNotice />
      <VersionNotice />
    </div>
  );
}

function useUnsavedNames(): readonly string[] {
  const { unsaved } = useSaving();
  const listing = useListing();
  return unsaved.map((path) => listing.find((each) => each.path === path)?.name ?? path);
}

function SavingNotice() {
  const { state, reason } = useSaving();
  const names = useUnsavedNames();
  const [exported, setExported] = useState(false);
  if (state === "failed") {
    const { lead, what } = failureWords(reason ?? "unknown", names);
    const acts = (
      <>
        <ExportAct isNext />
        <Button className="act" onPress={() => void retrySaving()}>
          Try again
        </Button>
      </>
    );
    return (
      <Notice urgent acts={acts}>
        <b>{lead}</b> {what}
      </Notice>
    );
  }
  if (state !== "upgraded-elsewhere") return null;
  const unsaved = names.length > 0;
  const load = (
    <Button className={unsaved ? "act" : "next-act"} onPress={() => location.reload()}>
      Load the page again
    </Button>
  );
  return (
    <Notice
      urgent
      acts={
        <>
          {unsaved && <ExportAct isNext onDone={() => setExported(true)} />}
          {(!unsaved || exported) && load}
        </>
      }
    >
      <b>A newer version of this app runs in another tab.</b> {memoryWords(names)}
      {unsaved
        ? "Export, then load this page again and import what you exported."
        : "Everything is kept. Load this page again to go on here."}
    </Notice>
  );
}

function TakenElsewhere() {
  const load = (
    <Button className="act" onPress={() => location.reload()}>
      Load this page again
    </Button>
  );
  return (
    <Notice plain acts={load}>
      <b>A newer version was taken in another tab.</b> This page goes on with the older one: load it again when your
      work is done.
    </Notice>
  );
}

function VersionNotice() {
  const { waiting, takenElsewhere } = useUpdate();
  const [later, setLater] = useState(false);
  if (takenElsewhere) return <TakenElsewhere />;
  if (!waiting || later) return null;
  const acts = (
    <>
      <Button className="act" onPress={takeUpdate}>
        Take it now
      </Button>
      <Button className="act" onPress={() => setLater(true)}>
        Later
      </Button>
    </>
  );
  return (
    <Notice plain acts={acts}>
      <b>A newer version is ready.</b> Take it when your work is done; the page then loads again.
    </Notice>
  );
}
