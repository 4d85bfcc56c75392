import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { line, screen, table } from "./turns-table.ts";

const acts = [
  "present",
  "present silent",
  "touch",
  "again",
  "quiet",
  "loud",
  "silent",
  "not silent",
  "urgent",
  "reader",
  "speaks",
  "text",
  "finish",
  "fail",
  "say",
  "too loud",
  "other talk",
  "wait short",
  "wait long",
  "end",
] as const;

describe("whatever happens, in any order", () => {
  it("the ear is never open while the voice speaks, nothing is spoken in silence or beside a screen reader, and reprompts stay at two", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.constantFrom(...acts), { maxLength: 40 }), fc.boolean(), async (script, fits) => {
        const t = table({ byHand: true });
        t.answers.fit = fits ? "taken" : "turned away";
        let key = 0;
        let silentScreen = false;
        let silent = false;
        let mode = "speaks";
        const check = (): void => {
          expect(t.voice.speaking() && t.ears.listening()).toBe(false);
          if (silent || silentScreen || mode !== "speaks") expect(t.voice.speaking()).toBe(false);
          if (mode === "reader") expect(t.ears.listening()).toBe(false);
        };
        for (const act of script) {
          if (act === "present" || act === "present silent") {
            silentScreen = act === "present silent";
            t.turns.present(screen(`s${++key}`, { silent: silentScreen }));
          }
          if (act === "touch") t.turns.touch();
          if (act === "again") t.turns.again();
          if (act === "quiet" || act === "loud") t.turns.quiet(act === "quiet");
          if (act === "silent" || act === "not silent") {
            silent = act === "silent";
            t.turns.setSilent(silent);
          }
          if (act === "urgent") t.turns.interrupt(line("Urgent."));
          if (act === "reader" || act === "speaks" || act === "text") {
            mode = act;
            t.turns.setMode(act === "reader" ? "screen reader" : act === "text" ? "text only" : "app speaks");
          }
          if (act === "finish") t.voice.finish();
          if (act === "fail") t.voice.fail("x");
          if (act === "say") t.ears.say("yes");
          if (act === "too loud" || act === "other talk") t.ears.trouble(act);
          if (act === "end") {
            t.turns.end();
            silentScreen = false;
          }
          check();
          for (let step = 0; step < 12; step++) {
            await t.timers.advance(act === "wait long" ? 1000 : act === "wait short" ? 50 : 0);
            check();
          }
          if (act === "end") expect(t.voice.speaking() || t.ears.listening()).toBe(false);
        }
        for (const passage of ["short", "names"]) {
          for (let k = 1; k <= key; k++)
            expect(
              t.voice.texts().filter((text) => text === `s${k} ${passage}${passage === "short" ? "?" : "."}`).length,
            ).toBeLessThanOrEqual(2);
        }
      }),
      { numRuns: 300 },
    );
  });
});
