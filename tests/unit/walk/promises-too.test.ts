// The promises of the walk, proved over every move in every state that has a key of its own: the third part of the explorations.
import { partOf, prove } from "../../kit/explore/prove.ts";

prove(partOf(2));
