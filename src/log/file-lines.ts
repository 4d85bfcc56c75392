// A text file, line by line, without ever holding it whole.

/** Lines of a UTF-8 file, without their ends. */
export async function* linesOfFile(file: Pick<Blob, "stream">): AsyncGenerator<string> {
  const reader = file.stream().getReader();
  const decoder = new TextDecoder();
  let rest = "";
  try {
    for (;;) {
      const { done, value } = await reader.read();
      const lines = (rest + decoder.decode(value, { stream: !done })).split("\n");
      rest = lines.pop() ?? "";
      yield* lines;
      if (done) break;
    }
  } finally {
    await reader.cancel().catch(() => undefined);
  }
  if (rest !== "") yield rest;
}
