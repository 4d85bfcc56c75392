// The measures are measured first: each must find the fault it is there for, and none on a page without faults.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launch } from "../../browser/launch.ts";
import { axe } from "./axe.ts";
import { clipped, targets, textSizes } from "./measure-mm.ts";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
});
afterAll(() => browser.close());

const show = (body: string, css = "") =>
  page.setContent(`<!doctype html><html lang="en"><head><title>Test</title><style>
    :root { --mm: 5px; } body { margin: 0; color: #15181e; background: #faf7ef; font: 600 50px/1.3 sans-serif; }
    h1 { font-size: 60px; margin: 0; } button { position: absolute; top: 400px; height: 100px; width: 300px; font: inherit; font-size: 50px; }
    ${css}</style></head><body><main><h1>Wash your hands</h1><p>Use soap.</p>${body}</main></body></html>`);

const two = '<button style="left:50px">Back</button><button style="left:390px">Next</button>';

describe("the measures in millimetres", () => {
  it("find no fault on a page without faults", async () => {
    await show(two);
    expect((await textSizes(page)).map((text) => [text.text, text.mm])).toEqual([
      ["Wash your hands", 12],
      ["Use soap.", 10],
      ["Back", 10],
      ["Next", 10],
    ]);
    expect(await targets(page)).toMatchObject([
      { name: "Back", left: 10, top: 80, width: 60, height: 20, gap: 8, nearest: "Next", edge: 10, free: true },
      { name: "Next", width: 60, height: 20, gap: 8, nearest: "Back", free: true },
    ]);
    expect(await clipped(page)).toEqual([]);
    expect(await axe(page)).toEqual([]);
  });

  it("find small and slanted text, and pass over text that is not shown", async () => {
    await show('<small style="font-size:20px">tiny</small><i>slanted</i><b hidden>gone</b><b style="visibility:hidden">unseen</b>');
    const sizes = await textSizes(page);
    expect(sizes.find((text) => text.text === "tiny")?.mm).toBe(4);
    expect(sizes.find((text) => text.text === "slanted")?.italic).toBe(true);
    expect(sizes.some((text) => text.text === "gone" || text.text === "unseen")).toBe(false);
  });

  it("find a small target, a narrow gap, a near edge and a covered control", async () => {
    await show(
      '<button style="left:10px;width:50px">A</button><button style="left:70px">Next</button><button style="left:600px">Under</button><div style="position:absolute;left:600px;top:400px;width:300px;height:100px"></div>',
    );
    const [small, near, under] = await targets(page);
    expect(small).toMatchObject({ width: 10, edge: 2, gap: 2, nearest: "Next" });
    expect(near).toMatchObject({ gap: 2, free: true });
    expect(under).toMatchObject({ free: false });
  });

  it.each([
    [
      "words that hang out of their button",
      '<button style="left:50px;width:60px;white-space:nowrap">Something is wrong</button>',
      "hangs out of its button",
    ],
    [
      "words cut off below",
      '<div style="height:40px;overflow:hidden"><p style="margin:0">One.</p><p style="margin:0">Two.</p></div>',
      '"Two." is cut off below',
    ],
    ["words off the glass", '<p style="position:absolute;top:790px;margin:0;height:10px;overflow:clip">Low.</p>', "leaves the glass"],
    [
      "words over words",
      '<p style="position:absolute;top:200px;left:0">One.</p><p style="position:absolute;top:215px;left:0">Two.</p>',
      "run into each other",
    ],
    ["a page wider than the glass", '<div style="width:1500px;height:10px"></div>', "wider than the glass"],
    [
      "controls over controls",
      '<button style="left:50px">Back</button><button style="left:200px">Next</button>',
      '"Back" and "Next" overlap',
    ],
  ])("find %s", async (_name, body, fault) => {
    await show(body);
    expect((await clipped(page)).join("\n")).toContain(fault);
  });

  it("leave words on a later page of a pager to the button that turns it", async () => {
    await show('<div data-fit="pages" style="height:40px;overflow:hidden"><p style="margin:0">One.</p><p style="margin:0">Two.</p></div>');
    expect(await clipped(page)).toEqual([]);
  });
});

describe("the rules of axe", () => {
  it("find faint words, a control without a name and what they cannot decide", async () => {
    await show('<p style="color:#8a8a8a">Faint.</p>');
    expect((await axe(page)).join("\n")).toMatch(/broken color-contrast/);
    await show('<button style="left:50px"></button>');
    expect((await axe(page)).join("\n")).toMatch(/broken button-name/);
    await show('<p style="background:linear-gradient(#fff,#888)">Shaded.</p>');
    expect((await axe(page)).join("\n")).toMatch(/undecided color-contrast/);
  });

  it("find words between 4.5 and 7 to 1", async () => {
    await show('<p style="color:#666;font-size:16px">Weak.</p>');
    expect((await axe(page)).join("\n")).toMatch(/broken color-contrast-enhanced/);
  });
});
