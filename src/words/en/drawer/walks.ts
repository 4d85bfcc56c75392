// How the walks go, in the drawer's words: counts for a keeper, and never a verdict on the person.
import { SPAN_DAYS, type StepCount, type Walks } from "#reports/walks.ts";
