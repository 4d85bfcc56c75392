// The promises of the walk, proved for background insulin and for the reading walk.
import { BACKGROUND_EXPLORATIONS } from "../../kit/explore/households-background.ts";
import { prove } from "../../kit/explore/prove.ts";

prove(BACKGROUND_EXPLORATIONS);
