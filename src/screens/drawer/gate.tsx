// The way in: which keeper, and the PIN. Wrong tries make the next one wait, longer each time.
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import { afterWrong, NO_TRIES, pinWait, settled } from "#keeping/pin.ts";
import { BigButton } from "#ui/button.tsx";
import type { NoticeProps } from "#ui/notice.tsx";
import { TextField } from "#ui/text-field.tsx";
import { DRAWER, waitWords } from "#words/en/drawer.ts";
import { Page } from "./parts/page.tsx";
import type { DrawerProps, KeeperHere } from "./ports.ts";

interface GateProps extends Pick<DrawerProps, "house" | "now" | "checkPin" | "tries" | "onTries" | "onClose" | "demoPin"> {
  onOpen(keeper: KeeperHere): void;
  /** Further buttons, for whoever has no PIN. */
  extra: ComponentChildren;
}

export function Gate(props: GateProps) {
  const { keepers } = props.house;
  const only = keepers.length === 1 ? keepers[0] : undefined;
  const [chosen, choose] = useState<string | null>(only?.id ?? null);
  const keeper = keepers.find((k) => k.id === chosen);
  if (keeper) return <PinPage key={keeper.id} {...props} keeper={keeper} onOther={only ? null : () => choose(null)} />;
  return (
    <Page title={DRAWER.who} actions={<BigButton role="choice" safe label={DRAWER.close} onPress={props.onClose} />}>
      <div class="drawer-menu">
        {keepers.map((k) => (
          <BigButton key={k.id} role="choice" label={k.name} onPress={() => choose(k.id)} />
        ))}
      </div>
    </Page>
  );
}

function PinPage({
  keeper,
  onOther,
  ...props
}: GateProps & { keeper: GateProps["house"]["keepers"][number]; onOther: (() => void) | null }) {
  const { tries, onTries, now } = props;
  const [pin, setPin] = useState("");
  const [checking, setChecking] = useState(false);
  const [notice, setNotice] = useState<NoticeProps | null>(null);
  useEffect(() => {
    if (tries.at > now.wall) onTries(settled(tries, now.wall));
  }, [tries, now.wall]);
  const wait = pinWait(tries, now.wall);

  const open = async () => {
    if (checking || wait > 0 || pin === "") return;
    setChecking(true);
    setNotice(null);
    const answer = await props.checkPin(pin, keeper.pin);
    setChecking(false);
    if (answer === "right") {
      onTries(NO_TRIES);
      props.onOpen({ id: keeper.id, name: keeper.name });
      return;
    }
    setPin("");
    if (answer === "not supported") {
      setNotice({ heading: DRAWER.noCheckHeading, ...DRAWER.noCheck });
      return;
    }
    const next = afterWrong(tries, now.wall);
    onTries(next);
    const left = pinWait(next, now.wall);
    setNotice({ heading: DRAWER.wrongPin, ...DRAWER.wrongPinParts(left > 0 ? DRAWER.waitFor(waitWords(left)) : null) });
  };
  return (
    <Page
      title={DRAWER.pinTitle(keeper.name)}
      lines={props.demoPin === undefined ? [] : [DRAWER.demoLine, DRAWER.demoPin(props.demoPin)]}
      notice={notice}
      said={checking ? DRAWER.checking : wait > 0 ? DRAWER.waitFor(waitWords(wait)) : null}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.close} onPress={props.onClose} />
          {props.extra}
          {onOther ? <BigButton role="choice" label={DRAWER.another} onPress={onOther} /> : null}
          <BigButton role="main" label={DRAWER.open} onPress={() => void open()} />
        </>
      }
    >
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void open();
        }}
      >
        <TextField label={DRAWER.pin} value={pin} onInput={setPin} keyboard="numeric" secret fill="current-password" />
      </form>
    </Page>
  );
}
