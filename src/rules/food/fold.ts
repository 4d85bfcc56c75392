// Written or heard words brought to one shape, so that "Crème caramel" and "creme  caramel" are the same.

/** Lower case, no accents, no apostrophes, single spaces. */
export const fold = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f'’]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();

/** A word without its plural ending, so that "potatoes" and "potato", "fries" and "fry" meet. Only ever compared with another stem. */
export const stem = (word: string): string => {
  if (word.length < 3) return word;
  const bare = word.replace(/(oes|ches|shes|xes|sses)$/, (ending) => ending.slice(0, -2)).replace(/([^s])s$/, "$1");
  return bare.replace(/(ie|y)$/, "i");
};
