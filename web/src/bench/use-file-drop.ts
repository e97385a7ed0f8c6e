import { useEffect, useRef, useState } from "react";

/**
 * Takes files that are dropped anywhere on the page.
 *
 * @returns whether files are held over the page now
 */
export function useFileDrop(onFiles: (files: readonly File[]) => void): boolean {
  const [over, setOver] = useState(false);
  const take = useRef(onFiles);
  take.current = onFiles;
  useEffect(() => {
    const carries = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") === true;
    const onOver = (event: DragEvent): void => {
      if (!carries(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const onLeave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent): void => {
      if (!carries(event)) return;
      event.preventDefault();
      setOver(false);
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length > 0) take.current(files);
    };
    addEventListener("dragover", onOver);
    addEventListener("dragleave", onLeave);
    addEventListener("drop", onDrop);
    return () => {
      removeEventListener("dragover", onOver);
      removeEventListener("dragleave", onLeave);
      removeEventListener("drop", onDrop);
    };
  }, []);
  return over;
}
