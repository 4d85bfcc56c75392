// "Check the ear": three tries of one sentence, each reported plainly. Nothing is kept.
import { useEffect, useState } from "preact/hooks";
import { BigButton } from "#ui/button.tsx";
import { EAR, type EarState, type EarTry, sayEar, sayRoom, sayTry } from "#words/en/drawer/ear.ts";
import { DRAWER } from "#words/en/drawer.ts";
import type { View } from "./list-pages.tsx";
import { Page } from "./parts/page.tsx";
import type { EarTrial } from "./ports.ts";

const TRIES = 3;

export function EarPage({ ear, go }: { ear: EarTrial; go(view: View): void }) {
  const [state, setState] = useState<EarState | null>(null);
  const [tries, setTries] = useState<readonly EarTry[]>([]);
  const [listening, setListening] = useState(false);
  const [said, setSaid] = useState<string | null>(null);
  useEffect(() => {
    void ear.state().then(setState);
    return () => ear.stop();
  }, [ear]);

  const listen = async () => {
    if (listening) return;
    // Nothing above the button may move under the finger that presses it: the browser would click what came there.
    setListening(true);
    const tried = await ear.listen();
    setTries((before) => (before.length >= TRIES ? [tried] : [...before, tried]));
    setSaid(sayTry(tried));
    setListening(false);
    setState(await ear.state());
  };
  const install = async () => {
    setSaid(EAR.fetching);
    setSaid((await ear.install()) ? EAR.fetched : EAR.notFetched);
    setState(await ear.state());
  };

  const hears = state !== null && state.ear !== "none";
  const room = tries.at(-1)?.room ?? null;
  return (
    <Page
      title={EAR.title}
      lines={[...(state ? sayEar(state) : []), ...(hears ? [EAR.how] : [])]}
      said={said}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.back} onPress={() => go({ at: "menu" })} />
          {hears ? (
            <BigButton
              role="main"
              label={listening ? EAR.listening : tries.length >= TRIES ? EAR.more : EAR.listen}
              onPress={() => void listen()}
            />
          ) : null}
        </>
      }
    >
      <p class="for-ears" role="status">
        {listening ? EAR.listening : ""}
      </p>
      {hears ? <h2>{EAR.say}</h2> : null}
      {tries.length > 0 ? (
        <>
          <ol class="drawer-list">
            {tries.map((tried, i) => (
              <li key={i}>{sayTry(tried)}</li>
            ))}
          </ol>
          <p>{sayRoom(room)}</p>
          {tries.length >= TRIES ? <p>{EAR.score(tries.filter((t) => t.right && t.how === "sure").length, TRIES)}</p> : null}
        </>
      ) : null}
      {state?.language === "can be fetched" ? (
        <section>
          {EAR.consent.map((line) => (
            <p key={line}>{line}</p>
          ))}
          <BigButton role="choice" label={EAR.fetch} onPress={() => void install()} />
        </section>
      ) : null}
    </Page>
  );
}
