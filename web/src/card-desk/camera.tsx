import { useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { codeReader } from "./code-in-picture.js";

/** How often the camera's picture is looked at [ms]. */
const LOOK_EVERY = 250;

/** Whether the browser can read a code as the camera sees it. */
export function canLook(): boolean {
  return codeReader() !== null && navigator.mediaDevices?.getUserMedia !== undefined;
}

/** Reads a code as the camera sees it. */
export function Camera({ onText }: { readonly onText: (text: string) => void }) {
  const [on, setOn] = useState(false);
  const [failed, setFailed] = useState(false);
  return (
    <>
      <Button
        className="act"
        onPress={() => {
          setFailed(false);
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
          onFailed={() => {
            setOn(false);
            setFailed(true);
          }}
        />
      )}
      <p role="status" className="quiet">
        {failed ? "The camera gives no picture: choose a photo, or paste the text." : ""}
      </p>
    </>
  );
}

interface LookingProps {
  readonly onText: (text: string) => void;
  readonly onFailed: () => void;
}

function Looking({ onText, onFailed }: LookingProps) {
  const video = useRef<HTMLVideoElement>(null);
  const heard = useRef({ onText, onFailed });
  heard.current = { onText, onFailed };
  useEffect(() => {
    let stream: MediaStream | null = null;
    let over = false;
    const reader = codeReader();
    const look = async (): Promise<void> => {
      const { current } = video;
      if (over || current === null || reader === null) return;
      const [found] = current.readyState >= current.HAVE_CURRENT_DATA ? await reader.detect(current) : [];
      if (over) return;
      if (found === undefined) setTimeout(() => void look().catch(fail), LOOK_EVERY);
      else heard.current.onText(found.rawValue);
    };
    const fail = (): void => {
      if (!over) heard.current.onFailed();
    };
    const begin = async (): Promise<void> => {
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
      if (over) return stop();
      if (video.current === null) return;
      video.current.srcObject = stream;
      await video.current.play();
      await look();
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
