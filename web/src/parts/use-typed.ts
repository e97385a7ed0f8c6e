import { useState } from "react";

/**
 * What is shown while somebody types: their own text as long as the store holds what it means, else the store's.
 *
 * @param stored the store's text
 * @param same whether two texts mean the same
 */
export function useTyped(stored: string, same: (typed: string, stored: string) => boolean) {
  const [typed, setTyped] = useState<string | null>(null);
  return [typed !== null && same(typed, stored) ? typed : stored, setTyped] as const;
}
