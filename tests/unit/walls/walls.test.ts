import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

/** The plan of the house as DEVELOPERS.md draws it, written a second time: the linter's settings must agree with it in every pair of rooms. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  events: [],
  rules: ["events"],
  walk: ["events", "rules"],
  keeping: ["events", "rules"],
  words: ["events", "rules", "walk", "keeping"],
  reports: ["events", "rules", "walk", "keeping", "words"],
  log: ["events"],
  speech: ["events", "walk", "words"],
  devices: [],
  ui: [],
  screens: ["events", "rules", "walk", "keeping", "words", "reports", "ui"],
  app: ["events", "rules", "walk", "keeping", "words", "reports", "log", "speech", "devices", "ui", "screens", "demo-data"],
};
const mayUse: Readonly<Record<string, readonly string[]>> = {
  events: ["zod/mini"],
  speech: ["zod/mini", "fft.js"],
  log: ["dexie", "@noble/hashes/sha2.js"],
  ui: ["preact", "preact/hooks", "@preact/signals"],
  screens: ["preact", "preact/hooks", "@preact/signals"],
  app: ["preact", "preact/hooks", "@preact/signals", "uuid", "@noble/hashes/sha2.js", "virtual:pwa-register"],
};
const pureRooms = ["events", "rules", "walk", "keeping", "words", "reports"];

const rooms = Object.keys(mayImport);
const packages = [...new Set(Object.values(mayUse).flat())].concat("zod", "playwright-core", "node:fs");
const outside = "Date document window globalThis performance crypto navigator localStorage setTimeout setInterval fetch".split(" ");

/** Every way in which one file can name another. */
const waysToImport: Readonly<Record<string, (from: string) => string>> = {
  plain: (from) => `import { a } from "${from}";\nexport const b = a;`,
  "type only": (from) => `import type { A } from "${from}";\nexport type B = A;`,
  "passed on": (from) => `export { a } from "${from}";`,
  "on demand": (from) => `export const later = () => import("${from}");`,
  "inside a type": (from) => `export type B = import("${from}").A;`,
};
/** Ways around the wall, each written from src/rules/card/. */
const backDoors = ["../../log/x.ts", "./../../log/x.ts", "./deeper/../../../log/x.ts", "src/log/x.ts", "/log/x.ts"];

/** Lints folders with the settings found in `home`; answers how many files were read and which rules each file broke. */
function lint(home: string, folder: string) {
  const biome = join("node_modules", ".bin", "biome");
  const run = spawnSync(biome, ["lint", "--reporter=json", "--max-diagnostics=none", `--config-path=${home}`, folder], {
    encoding: "utf8",
    maxBuffer: 64_000_000,
  });
  const report: {
    summary: { unchanged: number; changed: number };
    diagnostics: { category: string; message: string; location: { path: string } }[];
  } = JSON.parse(run.stdout);
  const broken = new Map<string, string[]>();
  for (const { location, category, message } of report.diagnostics) {
    broken.set(location.path, [...(broken.get(location.path) ?? []), `${category}: ${message}`]);
  }
  return { files: report.summary.unchanged + report.summary.changed, broken };
}

const isWall = (complaint: string) => /noRestrictedImports|noRestrictedGlobals|noImportCycles|plugin/.test(complaint);

const home = mkdtempSync(join(tmpdir(), "tablebell-walls-"));
let planted = 0;
let broken = new Map<string, string[]>();

/** Puts a file into the copy of the house and answers where. */
function plant(room: string, name: string, text: string): string {
  const path = join(home, "src", room, `${name.replaceAll(/[^\w-]+/g, "-")}.ts`);
  if (existsSync(path)) throw new Error(`Two planted files would both be ${path}.`);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, `${text}\n`);
  planted += 1;
  return path;
}

const complaintsAbout = (path: string) => (broken.get(path) ?? []).filter(isWall);

const otherRooms = (room: string) => [...rooms, "demo-data"].filter((other) => other !== room);
const doors = rooms.map((room) => {
  const way = waysToImport.plain ?? String;
  const ask = (from: string, open: boolean) => ({ from, open, path: plant(room, `door ${from}`, way(from)) });
  return {
    room,
    toOwn: [ask("./x.ts", true), ask("./deeper/x.ts", true), ask(`#${room}/x.ts`, true)],
    toRooms: otherRooms(room).map((other) => ask(`#${other}/x.ts`, mayImport[room]?.includes(other) ?? false)),
    toPackages: packages.map((name) => ask(name, mayUse[room]?.includes(name) ?? false)),
  };
});
const ways = Object.entries(waysToImport).map(([way, write]) => ({ way, path: plant("rules", `way ${way}`, write("#log/x.ts")) }));
const back = backDoors.map((from, index) => ({
  from,
  path: plant("rules/card", `back ${index}`, `import { a } from "${from}";\nexport const b = a;`),
}));
const touches = pureRooms.map((room) => ({
  room,
  seen: outside.map((name) => ({ name, path: plant(room, `touch ${name}`, `export const b = ${name};`) })),
  random: ["Math.random()", 'Math["random"]()', "const { random } = Math"].map((text, index) => ({
    text,
    path: plant(room, `random ${index}`, text.startsWith("const") ? `${text};\nexport const b = random();` : `export const b = ${text};`),
  })),
}));
const free = plant("devices", "clock", "export const now = () => [Date.now(), Math.random()];");
const circle = [
  plant("walk", "round", 'import { b } from "./trip.ts";\nexport const a = () => b;'),
  plant("walk", "trip", 'import { a } from "./round.ts";\nexport const b = () => a;'),
];
const forgotten = plant("app", "forgotten", "async function append() {\n  await 0;\n}\nexport function send() {\n  append();\n}");

beforeAll(() => {
  for (const part of [".biome.json", ".biome", "package.json"]) cpSync(part, join(home, part), { recursive: true });
  const result = lint(home, join(home, "src"));
  expect(result.files, "a green answer over no files is worth nothing").toBe(planted);
  broken = result.broken;
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

describe.each(doors)("the walls of $room/", ({ toOwn, toRooms, toPackages }) => {
  it("let in a neighbour in the same room", () => {
    expect(toOwn.filter(({ path }) => complaintsAbout(path).length > 0).map(({ from }) => from)).toEqual([]);
  });
  it("open to the rooms of the plan and to no other", () => {
    const open = toRooms.filter(({ path }) => complaintsAbout(path).length === 0).map(({ from }) => from);
    expect(open).toEqual(toRooms.filter((door) => door.open).map(({ from }) => from));
  });
  it("open to the packages of the plan and to no other", () => {
    const open = toPackages.filter(({ path }) => complaintsAbout(path).length === 0).map(({ from }) => from);
    expect(open).toEqual(toPackages.filter((door) => door.open).map(({ from }) => from));
  });
});

describe("a wall", () => {
  it.each(ways)("holds against an import that is $way", ({ path }) => {
    expect(complaintsAbout(path)).not.toEqual([]);
  });
  it.each(back)("holds against the back door $from", ({ path }) => {
    expect(complaintsAbout(path)).not.toEqual([]);
  });
  it("holds against two files that import each other", () => {
    for (const path of circle) expect(complaintsAbout(path).join()).toContain("noImportCycles");
  });
});

describe.each(touches)("the pure room $room/", ({ seen, random }) => {
  it("sees no page, clock, store or network", () => {
    expect(seen.filter(({ path }) => complaintsAbout(path).length === 0).map(({ name }) => name)).toEqual([]);
  });
  it("knows no chance", () => {
    expect(random.filter(({ path }) => complaintsAbout(path).length === 0).map(({ text }) => text)).toEqual([]);
  });
});

it("lets devices/ read the clock and roll the dice", () => {
  expect(complaintsAbout(free)).toEqual([]);
});

it("finds a promise that nobody waits for: a forgotten append is a lost record", () => {
  expect((broken.get(forgotten) ?? []).join()).toContain("noFloatingPromises");
});

it("finds the house as it stands within its walls", () => {
  const result = lint(".", "src");
  expect(result.files).toBeGreaterThan(10);
  const outOfBounds = [...result.broken].flatMap(([path, complaints]) =>
    complaints.filter(isWall).map((complaint) => `${path} ${complaint}`),
  );
  expect(outOfBounds).toEqual([]);
});
