import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { APP_VERSION } from "#app/version.ts";
import { FOOD_CREDITS } from "#rules/food/sources.ts";
import { ABOUT_SHOWN, aboutSaid } from "#words/en/about.ts";

describe("the page about the app", () => {
  it("names the version of the package, and that this is no medical device", () => {
    const { version } = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8")) as { version: string };
    expect(APP_VERSION).toBe(version);
    expect(aboutSaid(APP_VERSION)).toEqual(["Tablebell is not a medical device.", `This is version ${version}.`]);
  });

  it("shows every credit that the food tables ask for", () => {
    expect(ABOUT_SHOWN).toEqual(expect.arrayContaining([...FOOD_CREDITS]));
  });
});
