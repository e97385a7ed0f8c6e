import { useEffect } from "react";
import { useSettings } from "../store/index.js";

/** Puts the chosen theme on the page; `auto` leaves it to the device. */
export function useTheme(): void {
  const [{ theme }] = useSettings();
  useEffect(() => {
    const page = document.documentElement;
    if (theme === "auto") delete page.dataset["theme"];
    else page.dataset["theme"] = theme;
  }, [theme]);
}
