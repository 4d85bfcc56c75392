// Where the figures of the food table come from, and how far each source can be trusted.

interface Source {
  /** As printed beside a figure; the food's number in that source follows. */
  name: string;
  /** How the figures were checked when the table was made. */
  checked: string;
  /** "by difference" is the US way: what is left after water, protein, fat and ash. "estimated" was converted or computed. */
  total: "by difference" | "estimated" | "label";
  /** The weight of the portion was not read in a source. */
  weightFromMemory: boolean;
  /** The carbohydrate itself was not read in a source, wholly or in part. */
  carbohydrateFromMemory: boolean;
}

const SOURCES: Record<string, Source> = {
  S: {
    name: "USDA National Nutrient Database, Standard Reference, food",
    checked: "two public copies of the reference agree; household weight from its release 28",
    total: "by difference",
    weightFromMemory: false,
    carbohydrateFromMemory: false,
  },
  C: {
    // The data set counts available carbohydrate as monosaccharides. Weight: starch / 1.10, double sugars / 1.05, single sugars x 1; total adds the fibre.
    name: "UK Composition of Foods Integrated Dataset 2021, food",
    checked: "one public copy read; converted from monosaccharides to weight, fibre added",
    total: "estimated",
    weightFromMemory: true,
    carbohydrateFromMemory: false,
  },
  J: {
    name: "Standard Tables of Food Composition in Japan 2015, food",
    checked: "one public copy read",
    total: "by difference",
    weightFromMemory: true,
    carbohydrateFromMemory: false,
  },
  F: {
    name: "USDA Food and Nutrient Database for Dietary Studies, food",
    checked: "worked back from the foods of a published 24-hour recall",
    total: "by difference",
    weightFromMemory: true,
    carbohydrateFromMemory: false,
  },
  I: {
    name: "computed from Indian Food Composition Tables 2017, foods",
    checked: "ingredients read; recipe (3 rice to 1 black gram dal), water and oil from memory",
    total: "estimated",
    weightFromMemory: true,
    carbohydrateFromMemory: true,
  },
  L: {
    name: "label of a glucose product, grams of glucose a piece:",
    checked: "from memory",
    total: "label",
    weightFromMemory: true,
    carbohydrateFromMemory: true,
  },
};

/** The source of a code such as "S18069" (a letter for the source, then the food's number in it). An unknown letter is a defect of the table. */
export const sourceOf = (code: string): Source & { number: string } => {
  const source = SOURCES[code.charAt(0)];
  if (source === undefined || code.length < 2) throw new Error(`unknown food source "${code}"`);
  return { ...source, number: code.slice(1) };
};

/** To be printed wherever the app names its sources. The first line is asked for by the licence of the UK data. */
export const FOOD_CREDITS = [
  "Contains public sector information licensed under the Open Government Licence v3.0",
  "USDA National Nutrient Database for Standard Reference (public domain)",
  "USDA Food and Nutrient Database for Dietary Studies (public domain)",
  "Standard Tables of Food Composition in Japan 2015, Ministry of Education, Culture, Sports, Science and Technology",
  "Indian Food Composition Tables 2017, National Institute of Nutrition",
] as const;
