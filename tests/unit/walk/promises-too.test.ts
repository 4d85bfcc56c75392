// The promises of the walk, proved over every move in every state that has a key of its own: the second half of the explorations.
import { halfOf, prove } from "../../kit/explore/prove.ts";

prove(halfOf(1));
