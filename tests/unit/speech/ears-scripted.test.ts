import { describe, expect, it } from "vitest";
import { ScriptedEars } from "#speech/ears-scripted.ts";

describe("the scripted ear", () => {
  it("hears only while it listens, and shows what was offered", async () => {
    const ears = new ScriptedEars();
    const heard: string[] = [];
    expect(ears.say("yes")).toBe(false);
    void ears.listen(["yes", "no"], (h) => heard.push(h.text));
    expect(ears.vocabulary).toEqual(["yes", "no"]);
    expect(ears.say("yes")).toBe(true);
    ears.pause();
    expect(ears.say("no")).toBe(false);
    expect(heard).toEqual(["yes"]);
    expect(await ears.available()).toBe("on the device");
  });
});
