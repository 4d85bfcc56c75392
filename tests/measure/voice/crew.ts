import { fork } from "node:child_process";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import type { Job, Results } from "./worker.ts";

/** The trials shared out among as many processes as there are processors, at most four. */
export async function crew(job: Omit<Job, "part" | "parts">): Promise<Results> {
  const parts = Math.max(1, Math.min(4, cpus().length));
  const all = await Promise.all(Array.from({ length: parts }, (_, part) => one({ ...job, part, parts })));
  return {
    own: all.flatMap((r) => r.own),
    foreign: all.flatMap((r) => r.foreign),
    dialogues: all.flatMap((r) => r.dialogues),
    left: all.reduce((sum, r) => sum + r.left, 0),
  };
}

/** A process and not a thread: it is started with the same loader of TypeScript as this one. */
function one(job: Job): Promise<Results> {
  return new Promise((resolve, reject) => {
    const child = fork(fileURLToPath(new URL("./worker.ts", import.meta.url)), { serialization: "advanced" });
    let found: Results | null = null;
    child.once("message", (results: Results) => {
      found = results;
    });
    child.once("error", reject);
    child.once("exit", (code) =>
      found !== null ? resolve(found) : reject(new Error(`A part of the measure ended with ${code} and no result.`)),
    );
    child.send(job);
  });
}
