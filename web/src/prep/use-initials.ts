import { useState } from "react";

const KEY = "delaywright-initials";

function remembered(): string {
  try {
    return localStorage.getItem(KEY) ?? "";
  } catch {
    return "";
  }
}

/** The initials that are signed with, remembered on this device. */
export function useInitials(): readonly [string, (initials: string) => void] {
  const [initials, setInitials] = useState(remembered);
  const change = (next: string): void => {
    setInitials(next);
    try {
      localStorage.setItem(KEY, next);
    } catch {
      // they then last as long as the page
    }
  };
  return [initials, change];
}
