// The name of every answer: what its button shows, and the phrases the ear takes for it. Phrases are whole, distinct and rich in vowels.
import type { Intent } from "#events/intent.ts";
import type { Pen } from "#events/pen.ts";
import type { Person } from "#events/person.ts";
import { frontPerson } from "#walk/offers.ts";
import type { HouseState } from "#walk/state.ts";
import { type Label, label } from "#words/say.ts";
import { backgroundLabel } from "./labels-background.ts";
import { draftSaid, illLabel, sugarLabel } from "./low-labels.ts";
import { MISHAP_LABELS } from "./mishap-labels.ts";
import { reminderLabel } from "./reminders.ts";
import { markedName } from "./who.ts";

const YES = ["yes", "yes it is", "that is right", "correct"] as const;
const NO = ["no", "no it is not", "that is wrong"] as const;

export const MEALS = { breakfast: "Breakfast", lunch: "Lunch", dinner: "Dinner", snack: "Snack" } as const;

function inHand(house: HouseState): Pen | undefined {
  const id = frontPerson(house)?.walk?.penCheck.pen;
  return Object.values(house.people)
    .flatMap((p) => p.pens)
    .find(({ pen }) => pen.id === id)?.pen;
}

/** In a house of two the name has its shape: one abandoned walk looks like another. */
function carryOn(house: HouseState, person: Person | undefined): Label {
  const name = person?.name ?? "";
  const shown = person && Object.keys(house.people).length > 1 ? markedName(person) : name;
  return { shown: `Carry on: ${shown}`, said: [`carry on: ${name.toLowerCase()}`, "carry on"] };
}

/** House and intent to the label. Numbers in labels repeat the value: "Yes, 180". */
export function labelOf(intent: Intent, house: HouseState): Label {
  const me = frontPerson(house);
  const draft = me?.walk?.draft;
  switch (intent.do) {
    case "open meal":
      return label(MEALS[intent.meal]);
    case "open low":
      // Between walks nobody is in front: with two people in the house the button says whose low it is.
      return Object.keys(house.people).length > 1
        ? label(`${house.people[intent.person]?.person.name ?? ""} feels low`)
        : label("I feel low", "i feel strange", "low sugar");
    case "open mishap": {
      // Said only on the screen "Something is wrong": a word of the kitchen's talk must count no insulin.
      const { shown } = MISHAP_LABELS[intent.mishap];
      const name = house.people[intent.person]?.person.name ?? "";
      return { shown: Object.keys(house.people).length > 1 ? `${name}: ${shown}` : shown, said: [] };
    }
    case "turn to":
      return carryOn(house, house.people[intent.person]?.person);
    case "set aside":
      return label("Put this aside");
    case "answer meal":
      return {
        all: label("All of it", "all", "i ate it all"),
        half: label("Half"),
        "hardly any": label("Hardly any"),
        "not kept down": label("Not kept down", "i was sick"),
      }[intent.ate];
    case "tell a dose later":
      return label("Away from home", "i took it away from home");
    case "answer reminder":
      return reminderLabel(intent.answer);
    case "doctor watches":
      return { shown: "A doctor watches", said: [] };
    case "feel for lumps":
      return intent.found === "none" ? label("No new lump", "no lump") : label("Not now");
    case "mark lump":
      return label("I found a lump", "there is a lump");
    case "lump is gone":
      return label("It is gone");
    case "leave":
      return label("Stop here", "leave this");
    case "back":
      return label("Back", "go back");
    case "report":
      return MISHAP_LABELS[intent.mishap];
    case "agree clock":
      return label("Yes", ...YES);
    case "doubt clock":
      return label("No", ...NO);
    case "pass time":
      return label("Wait");
    case "give number":
      return label("Give a number");
    case "agree number":
      return label(`Yes, ${draftSaid(me)}`, ...YES);
    case "change number":
      return me?.walk?.reading?.word === "HI" && !draft ? label("Test again") : label("No, change it", ...NO, "change it");
    case "choose unit":
      return intent.unit === "mg/dL" ? label("mg/dL", "milligrams") : label("mmol/L", "millimoles");
    case "read word":
      return intent.word === "HI" ? label("It shows HI", "it says high") : label("It shows LO", "it says low");
    case "begin wait":
      return label("Start", "start washing");
    case "wait is over":
      return {
        wash: label("Dry", "they are dry", "ready"),
        skin: label("Go on", "ready"),
        hold: label("It is out", "needle is out", "ready"),
        recheck: label("Go on"),
        watch: label("Go on"),
        ready: label("Go on"),
      }[me?.walk?.wait?.for ?? "ready"];
    case "jump wait":
      return label("It is dry already", "the skin is dry");
    case "answer taken":
      return {
        yes: label("Yes, I took it", "yes", "i took it"),
        // No bare "no", which every kitchen hears: this answer opens the way to a dose.
        no: label("Not yet", "no not yet", "no i did not"),
        "do not know": label("I do not know", "i am not sure"),
      }[intent.answer];
    case "the first was not taken":
      return label("No. The first was not taken", "the first was not taken");
    case "already washed":
      return label("Already washed", "they are clean");
    case "skip washing":
      return label("No water here");
    case "heard high advice":
      return label("Go on", "i understand");
    case "exercise":
      return intent.hard ? label("Yes", "yes", "hard exercise") : label("No", "no", "no exercise");
    case "add food":
      return label(intent.food);
    case "remove food":
      return label(`Take off: ${me?.walk?.lines[intent.index]?.name ?? ""}`);
    case "plate is complete":
      return label("That is all", "plate is complete");
    case "usual meal":
      return label(`Usual: ${me?.person.usualMeals[intent.index]?.name ?? ""}`, `usual ${me?.person.usualMeals[intent.index]?.name ?? ""}`);
    case "meal is ready":
      return label("Yes", "yes", "it is ready");
    case "meal is not ready":
      return label("Not yet", "no", "no not yet");
    case "heard dose":
      return label("Go on", "i understand", "next");
    case "meal eaten first":
      return label("Eaten", "i have eaten");
    case "name helper":
      return label(intent.name.charAt(0).toUpperCase() + intent.name.slice(1));
    case "pick pen": {
      const pen = Object.values(house.people)
        .flatMap((p) => p.pens)
        .find((p) => p.pen.id === intent.pen)?.pen;
      const mark = pen?.mark ?? "";
      return label(mark.charAt(0).toUpperCase() + mark.slice(1));
    }
    case "insulin looks":
      return {
        "as it should be": label("Yes, it is", "yes", "it looks right"),
        // Clear insulin that turned cloudy has no clumps, and its owner looks for a no.
        clumped:
          inHand(house)?.cloudy === false
            ? label("No, it is cloudy", "it is cloudy", "it is not clear", "it has clumps")
            : label("It has clumps", "it is clumped"),
        frozen: label("It was frozen", "it is frozen"),
        overheated: label("It was too hot", "it is too hot"),
      }[intent.look];
    case "insulin mixed":
      return label("It is milky", "it is mixed");
    case "needle fitted":
      return label("Both caps off", "ready", "done");
    case "primed":
      return intent.stream ? label("Yes, a stream", "yes", "yes a stream") : label("No stream", "no", "nothing came");
    case "take spot":
      return label("Use this place", "yes", "use it");
    case "not this spot":
      return {
        sore: label("It is sore", "sore"),
        lump: label("A lump is there", "lump"),
        "scar or mole": label("A scar or mole", "scar", "mole"),
        "cannot reach": label("I cannot reach", "cannot reach"),
        other: label("Another place", "no"),
      }[intent.reason];
    case "skin cleaned":
      return intent.how === "wiped" ? label("Wiped", "i wiped it") : label("No wipe", "the skin is clean");
    case "button is down":
      return label("It is down", "down", "the button is down");
    case "needle came out early":
      return label("It came out early", "it came out");
    case "window is at zero":
      // Never one phrase: said, it is a number, which is read back.
      return { shown: "0", said: [] };
    case "window not seen":
      return label("I cannot see it", "i cannot read it");
    case "button feels":
      return {
        flat: label("It is flat", "flat"),
        "standing out": label("It stands out", "stands out"),
        "not sure": label("I am not sure", "not sure"),
      }[intent.how];
    case "needle went in":
      return {
        yes: label("Yes, it went in", "yes", "it went in"),
        no: label("No, it did not", "it did not", "it did not go in"),
        "not sure": label("I am not sure", "not sure"),
      }[intent.answer];
    case "heard mishap advice":
      return label("I understand", "understood");
    case "put away":
      return label("Put away", "it is put away", "done");
    case "eating":
      return label("I am eating", "yes i am eating");
    case "cannot eat":
      return label("I cannot eat");
    case "finish":
      return label("Done", "finish", "all done");
    case "took sugar":
      return sugarLabel(intent, me);
    case "danger signs":
    case "read strip":
    case "no ketone strips":
    case "heard ill advice":
    case "finish ill":
      return illLabel(intent, me);
    case "cannot swallow":
      return label("Cannot swallow or wake", "cannot swallow", "i cannot swallow", "will not wake up");
    case "no meter":
      return label("No meter here", "no meter", "no strips");
    case "help step done":
      return label("That is done", "done", "next");
    case "open reading":
    case "open background":
    case "leave out reading":
    case "pen says":
      return backgroundLabel(intent, house);
    default:
      return intent satisfies never;
  }
}
