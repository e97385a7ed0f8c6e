import "./popover.css";
import type { ReactNode } from "react";
import { Button, Dialog, DialogTrigger, Popover } from "react-aria-components";

export interface WithSourceProps {
  /** The limit, as it is shown. */
  readonly children: ReactNode;
  /** Where it comes from, in words. */
  readonly source: ReactNode;
  /** What it limits, for those who do not see the line it stands in. */
  readonly of?: string;
}

/** A limit that says, on a tap, where it comes from. */
export function WithSource({ children, source, of }: WithSourceProps) {
  return (
    <DialogTrigger>
      <Button className="with-source">
        {children}
        <span className="hidden">, where {of ?? "it"} comes from</span>
      </Button>
      <Popover className="popover" placement="bottom">
        <Dialog aria-label={`Where ${of ?? "it"} comes from`}>{source}</Dialog>
      </Popover>
    </DialogTrigger>
  );
}
