import { mkdir, writeFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { grade, syllables, wordsOf } from "../kit/plain-language.ts";
import { type ReviewedScreen, reviewedScreens, sentencesOf } from "../kit/reviewed-screens.ts";
import type { Measured } from "./measured.ts";

const safe = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");

function block({ when, lines, answers }: ReviewedScreen): string {
  const said = lines.map((line) => `<li>${safe(line)}</li>`).join("");
  const buttons = answers.length > 0 ? `<p class="answers">Answers: ${answers.map(safe).join(" · ")}</p>` : "";
  return `<section><h3>${safe(when)}</h3><ol>${said}</ol>${buttons}<p class="mark">☐ right &nbsp; ☐ change to: ____________________</p></section>`;
}

function page(screens: readonly ReviewedScreen[]): string {
  const parts = [...new Set(screens.map(({ part }) => part))];
  const body = parts
    .map(
      (part) =>
        `<h2>${safe(part)}</h2>${screens
          .filter((s) => s.part === part)
          .map(block)
          .join("")}`,
    )
    .join("");
  const style =
    "body{font:14pt/1.4 sans-serif;max-width:46em;margin:2em auto}section{break-inside:avoid;border-top:1px solid;padding:.4em 0}h3{font-size:1em}.answers,.mark{margin:.3em 0}@page{margin:18mm}";
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Sentences for when it goes wrong</title><style>${style}</style>
<h1>Sentences for when it goes wrong</h1>
<p>Made from the program's own words, for a clinician to read and mark. Each sentence is shown and spoken. The person, the card and the telephone numbers are invented.
In square brackets stands what a clinic or a keeper types. Nothing here was reviewed by a clinician yet.</p>
<p>Read by: ____________________ &nbsp; On: ____________</p>${body}</html>
`;
}

/** The sentences of the walks for when it goes wrong, as one page to print. Argument: where it is written. */
export async function measure([file = ".cache/sentences-to-review.html"]: readonly string[] = []): Promise<Measured> {
  const screens = reviewedScreens();
  const sentences = sentencesOf(screens);
  const to = resolve(file);
  await mkdir(dirname(to), { recursive: true });
  await writeFile(to, page(screens));
  const parts = [...new Set(screens.map(({ part }) => part))];
  return {
    rows: parts.map((part) => {
      const own = screens.filter((s) => s.part === part);
      return { part, screens: own.length, sentences: sentencesOf(own).length };
    }),
    figures: {
      file: to,
      screens: screens.length,
      sentences: sentences.length,
      mostWords: Math.max(...sentences.map((s) => wordsOf(s).length)),
      mostSyllables: Math.max(...sentences.flatMap((s) => wordsOf(s).map(syllables))),
      schoolYears: Math.round(grade(sentences) * 10) / 10,
    },
  };
}
