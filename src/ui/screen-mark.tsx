// A strip along the top of every screen, for as long as nothing on it is what it seems: practice.
import { createContext } from "preact";
import { useContext } from "preact/hooks";

/** What stands in the strip; null: there is none. */
export const ScreenMark = createContext<string | null>(null);

export const useScreenMark = (): string | null => useContext(ScreenMark);
