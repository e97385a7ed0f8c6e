import "./dialog.css";
import type { ReactNode } from "react";

export interface NoticeProps {
  readonly children: ReactNode;
  /** Buttons and links at its end. */
  readonly acts?: ReactNode;
  /** Without a heavy frame. */
  readonly plain?: boolean;
  /** Said at once by a screen reader. */
  readonly urgent?: boolean;
}

/** A banner: something to know, with what can be done about it. */
export function Notice({ children, acts, plain = false, urgent = false }: NoticeProps) {
  return (
    <div className={plain ? "notice plain" : "notice"} role={urgent ? "alert" : "status"}>
      <div className="notice-words">{children}</div>
      {acts !== undefined && <div className="notice-acts">{acts}</div>}
    </div>
  );
}
