// The way in: which keeper, and the PIN. Wrong tries make the next one wait, longer each time.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { BigButton } from "#ui/button.tsx";
import type { NoticeProps } from "#ui/notice.tsx";
import { TextField } from "#ui/text-field.tsx";
import { DRAWER } from "#words/en/drawer.ts";
import { Page } from "./parts/page.tsx";
import type { DrawerProps, KeeperHere } from "./ports.ts";
import { useTries } from "./tries.ts";

interface GateProps extends Pick<DrawerProps, "house" | "now" | "checkPin" | "tries" | "onTries" | "onClose" | "demoPin"> {
  onOpen(keeper: KeeperHere): void;
  onForgot(keeper: string): void;
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
  const tries = useTries(props);
  const [pin, setPin] = useState("");
  const [checking, setChecking] = useState(false);
  const [notice, setNotice] = useState<NoticeProps | null>(null);

  const open = async () => {
    if (checking || tries.waiting !== null || pin === "") return;
    setChecking(true);
    setNotice(null);
    const answer = await props.checkPin(pin, keeper.pin);
    setChecking(false);
    if (answer === "right") {
      tries.right();
      props.onOpen({ id: keeper.id, name: keeper.name });
      return;
    }
    setPin("");
    if (answer === "not supported") setNotice({ heading: DRAWER.noCheckHeading, ...DRAWER.noCheck });
    else setNotice({ heading: DRAWER.wrongPin, ...DRAWER.wrongPinParts(tries.wrong()) });
  };
  return (
    <Page
      title={DRAWER.pinTitle(keeper.name)}
      lines={props.demoPin === undefined ? [] : [DRAWER.demoLine, DRAWER.demoPin(props.demoPin)]}
      notice={notice}
      said={tries.waiting}
      doing={checking ? DRAWER.checking : null}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.close} onPress={props.onClose} />
          {props.extra}
          <BigButton role="choice" label={DRAWER.forgot} onPress={() => props.onForgot(keeper.id)} />
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
