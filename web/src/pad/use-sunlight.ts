import { useLayoutEffect } from "react";
import { useSettings } from "../store/index.js";

/** At the pad the page is in the sunlight theme, unless the flyer chose the dark one. */
export function useSunlight(): void {
  const [{ theme }] = useSettings();
  useLayoutEffect(() => {
    const page = document.documentElement;
    page.dataset["theme"] = theme === "dark" ? "dark" : "sun";
    return () => {
      if (theme === "auto") delete page.dataset["theme"];
      else page.dataset["theme"] = theme;
    };
  }, [theme]);
}
