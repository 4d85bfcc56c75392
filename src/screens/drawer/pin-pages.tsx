// A new PIN, the printed code, and the way in for whoever forgot the PIN.
import { useState } from "preact/hooks";
import { changePin, makeCode, pinProblems } from "#keeping/keepers.ts";
import { readCode } from "#keeping/recovery.ts";
import { BigButton } from "#ui/button.tsx";
import type { NoticeProps } from "#ui/notice.tsx";
import { TextField } from "#ui/text-field.tsx";
import { DRAWER } from "#words/en/drawer.ts";
import { NEW_PIN } from "./forms/other-specs.ts";
import { Page } from "./parts/page.tsx";
import type { DrawerProps, KeeperHere } from "./ports.ts";
import { type DraftKept, FormPage, type Keep } from "./setup-pages.tsx";
import { useTries } from "./tries.ts";
import "#ui/paper.css";

const NO_CHECK: NoticeProps = { heading: DRAWER.noCheckHeading, ...DRAWER.noCheck };

interface NewPinProps extends DraftKept {
  drawer: DrawerProps;
  keep: Keep;
  keeper: KeeperHere;
  by: "PIN" | "printed code";
  back: { label: string; onPress: () => void };
  onDone(): void;
}

export function NewPinPage({ drawer, keep, keeper, by, onDone, ...page }: NewPinProps) {
  return (
    <FormPage
      {...page}
      title={DRAWER.newPinTitle(keeper.name)}
      lines={by === "PIN" ? [DRAWER.newPinIntro] : [DRAWER.newPinIntro, DRAWER.newPinUsed]}
      sections={NEW_PIN}
      save={DRAWER.save}
      decide={async (draft) => {
        const problems = pinProblems(draft);
        if (problems.length > 0) return { ok: false, problems };
        const pin = await drawer.hashPin((draft["keeper.pin"] ?? "").trim());
        return pin === "not supported" ? NO_CHECK : { ok: true, events: changePin(keeper.id, pin, by) };
      }}
      store={(events) => keep(null, events)}
      onDone={onDone}
    />
  );
}

interface CodePageProps {
  drawer: DrawerProps;
  keep: Keep;
  keeper: KeeperHere;
  onBack(): void;
}

/** Shown only after its hash is stored, and never again. */
export function CodePage({ drawer, keep, keeper, onBack }: CodePageProps) {
  const [code, setCode] = useState<string | null>(null);
  const [notice, setNotice] = useState<NoticeProps | null>(null);
  const hasOld = drawer.house.keepers.some((k) => k.id === keeper.id && k.recovery !== null);
  const make = async () => {
    const fresh = drawer.newCode();
    const kept = await drawer.hashPin(fresh);
    const refused = kept === "not supported" ? NO_CHECK : await keep(null, makeCode(keeper.id, kept));
    setNotice(refused);
    if (refused === null) setCode(fresh);
  };
  const back = <BigButton role="choice" safe label={DRAWER.back} onPress={onBack} />;
  if (code === null) {
    return (
      <Page
        key="make"
        title={DRAWER.makeCode}
        lines={[DRAWER.makeCodeIntro, ...(hasOld ? [DRAWER.makeCodeOld] : [])]}
        notice={notice}
        actions={
          <>
            {back}
            <BigButton role="main" label={DRAWER.makeCodeNow} onPress={() => void make()} />
          </>
        }
      />
    );
  }
  return (
    <div class="paper">
      <Page
        key="made"
        title={DRAWER.codeTitle(keeper.name)}
        lines={[DRAWER.codeMade]}
        actions={
          <>
            {back}
            <BigButton role="main" label={DRAWER.printCode} onPress={() => window.print()} />
          </>
        }
      >
        <p class="drawer-code">{code}</p>
      </Page>
    </div>
  );
}

interface RecoverProps {
  drawer: DrawerProps;
  keeper: DrawerProps["house"]["keepers"][number];
  onRight(): void;
  onBack(): void;
}

/** Wrong codes and wrong PINs count together, and wait together. */
export function RecoverPage({ drawer, keeper, onRight, onBack }: RecoverProps) {
  const tries = useTries(drawer);
  const [typed, setTyped] = useState("");
  const [notice, setNotice] = useState<NoticeProps | null>(
    keeper.recovery === null ? { heading: DRAWER.noCodeHeading, ...DRAWER.noCode } : null,
  );
  const open = async () => {
    if (keeper.recovery === null || tries.waiting !== null || typed === "") return;
    const code = readCode(typed);
    const answer = code === null ? "wrong" : await drawer.checkPin(code, keeper.recovery);
    if (answer === "right") {
      tries.right();
      onRight();
    } else if (answer === "not supported") setNotice(NO_CHECK);
    else setNotice({ heading: DRAWER.wrongCode, ...DRAWER.wrongCodeParts(tries.wrong()) });
  };
  return (
    <Page
      title={DRAWER.codeTitle(keeper.name)}
      notice={notice}
      said={tries.waiting}
      actions={
        <>
          <BigButton role="choice" safe label={DRAWER.close} onPress={onBack} />
          {keeper.recovery === null ? null : <BigButton role="main" label={DRAWER.open} onPress={() => void open()} />}
        </>
      }
    >
      {keeper.recovery === null ? null : (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void open();
          }}
        >
          <TextField label={DRAWER.code} hint={DRAWER.codeHint} value={typed} onInput={setTyped} keyboard="text" />
        </form>
      )}
    </Page>
  );
}
