/** The browser's audio, made at the first need and once: a browser that forbids sound may have none, or throw. */
export function madeOnce<T>(make: () => T | null): () => T | null {
  let made: T | null | undefined;
  return () => {
    if (made === undefined) {
      try {
        made = make();
      } catch {
        made = null;
      }
    }
    return made;
  };
}
