// The promises of the walk, proved for ill days, high readings and meals that were not eaten whole.
import { ILL_EXPLORATIONS } from "../../kit/explore/households-ill.ts";
import { prove } from "../../kit/explore/prove.ts";

prove(ILL_EXPLORATIONS);
