import { cpus } from "node:os";
import { Worker } from "node:worker_threads";
import type { Job, Results } from "./worker.ts";

/** The trials shared out among as many threads as there are processors, at most four. */
export async function crew(job: Omit<Job, "part" | "parts">): Promise<Results> {
  const parts = Math.max(1, Math.min(4, cpus().length));
  const all = await Promise.all(Array.from({ length: parts }, (_, part) => one({ ...job, part, parts })));
  return { own: all.flatMap((r) => r.own), foreign: all.flatMap((r) => r.foreign), dialogues: all.flatMap((r) => r.dialogues) };
}

function one(job: Job): Promise<Results> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL("./worker.ts", import.meta.url), { workerData: job });
    worker.once("message", resolve);
    worker.once("error", reject);
  });
}
