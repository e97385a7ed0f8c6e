import { useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { codeInSight, type Look } from "./code-in-picture.js";

/** How often the camera's picture is looked at [ms]. */
const LOOK_EVERY = 250;

/** Whether the browser lets the page ask for a camera. */
export function canLook(): boolean {
  return navigator.mediaDevices?.getUserMedia !== undefined;
}

/** Fine dots need many pixels: as many as the camera has, up to this width [px]. */
const WIDTH = 1920;

/**
 * Why there is no picture, and what else to do.
 *
 * @param error as the browser gave it
 */
export function cameraWords(error: unknown): string {
  const name = error instanceof Error ? error.name : "";
  if (name === "NotAllowedError" || name === "SecurityError")
    return "The camera is not allowed here: allow it for this page in the browser, choose a photo, or paste the text.";
  if (name === "NotFoundError" || name === "OverconstrainedError")
    return "No camera was found: choose a photo, or paste the text.";
  return "The camera gives no picture: choose a photo, or paste the text.";
}

/** Reads a code as the camera sees it. */
export function Camera({ onText }: { readonly onText: (text: string) => void }) {
  const [on, setOn] = useState(false);
  const [failed, setFailed] = useState("");
  return (
    <>
      <Button
        className="act"
        onPress={() => {
          setFailed("");
          setOn(!on);
        }}
      >
        {on ? "Put the camera away" : "Look with the camera"}
      </Button>
      {on && (
        <Looking
          onText={(text) => {
            setOn(false);
            onText(text);
          }}
          onFailed={(error) => {
            setOn(false);
            setFailed(cameraWords(error));
          }}
        />
      )}
      <p role="status" className="quiet">
        {failed}
      </p>
    </>
  );
}

interface LookingProps {
  readonly onText: (text: string) => void;
  readonly onFailed: (error: unknown) => void;
}

function Looking({ onText, onFailed }: LookingProps) {
  const video = useRef<HTMLVideoElement>(null);
  const heard = useRef({ onText, onFailed });
  heard.current = { onText, onFailed };
  useEffect(() => {
    let stream: MediaStream | null = null;
    let over = false;
    const lookOn = async (look: Look): Promise<void> => {
      const { current } = video;
      if (over || current === null) return;
      const found = current.readyState >= current.HAVE_CURRENT_DATA ? await look(current) : null;
      if (over) return;
      if (found === null) setTimeout(() => void lookOn(look).catch(fail), LOOK_EVERY);
      else heard.current.onText(found);
    };
    const fail = (error: unknown): void => {
      if (!over) heard.current.onFailed(error);
    };
    const begin = async (): Promise<void> => {
      const wanted = { facingMode: "environment", width: { ideal: WIDTH } };
      stream = await navigator.mediaDevices.getUserMedia({ video: wanted });
      if (over) return stop();
      if (video.current === null) return;
      video.current.srcObject = stream;
      await video.current.play();
      await lookOn(await codeInSight());
    };
    const stop = (): void => {
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
    begin().catch(fail);
    return () => {
      over = true;
      stop();
    };
  }, []);
  return <video ref={video} className="desk-camera" muted playsInline aria-label="What the camera sees" />;
}
