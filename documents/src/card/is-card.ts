import { cardWords } from "../words/card.en.js";

const PAGE = /^<!doctype html>\s*<html lang="en">[\s\S]*<article class="flight-card" lang="en">/;
const DATA = ["computed", "asCut", "suggested", "passed", "code"];

/** Whether a text is a flight card as it was made here: its page, or its data as JSON. What is not may be a flyer's own. */
export function isCard(text: string): boolean {
  if (PAGE.test(text)) return text.includes(`<title>${cardWords.title}: `);
  if (!text.startsWith("{")) return false;
  try {
    const data: object = JSON.parse(text);
    return !Object.hasOwn(data, "kind") && DATA.every((key) => Object.hasOwn(data, key));
  } catch {
    return false;
  }
}
