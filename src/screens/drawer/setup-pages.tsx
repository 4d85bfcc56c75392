// The pages that fill in one form and keep it: household, keeper, person, pen.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { Happened } from "#events/happened.ts";
import { setHousehold, USUAL_EMERGENCY } from "#keeping/household.ts";
import { addKeeper, keeperProblems } from "#keeping/keepers.ts";
import { addPen } from "#keeping/pens.ts";
import { addPerson, changePerson, draftOfPerson } from "#keeping/people.ts";
import type { Draft, NotFor, Problem } from "#keeping/problem.ts";
import { BigButton } from "#ui/button.tsx";
import type { NoticeProps } from "#ui/notice.tsx";
import { backgroundInsulins } from "#walk/insulin.ts";
import type { PersonState } from "#walk/state.ts";
import { DRAWER, NOT_FOR_TODO, notFor } from "#words/en/drawer.ts";
import { HOUSEHOLD, KEEPER, penSections, personSections } from "./forms/other-specs.ts";
import { Form } from "./parts/form.tsx";
import { Page } from "./parts/page.tsx";
import type { Section } from "./parts/spec.ts";
import type { DrawerProps, KeeperHere } from "./ports.ts";

/** Typed entries of a page, kept by the drawer while it is open: leaving a page loses nothing. */
export interface DraftKept {
  draft: Draft;
  /** From what is typed by then: two changes may come before the page is drawn again (a browser that fills in names). */
  change(update: (draft: Draft) => Draft): void;
}

/** Stores events of one person, or of nobody; null when they are stored, else what to show. */
export type Keep = (person: string | null, events: readonly Happened[]) => Promise<NoticeProps | null>;

type Answer = { ok: true; events: Happened[] } | { ok: false; notFor: NotFor } | { ok: false; problems: readonly Problem[] };

interface FormPageProps extends DraftKept {
  title: string;
  lines?: readonly string[];
  sections: readonly Section[];
  save: string;
  back?: { label: string; onPress: () => void };
  extra?: ComponentChildren;
  glucose?: string;
  decide(draft: Draft): Answer | Promise<Answer | NoticeProps>;
  store(events: readonly Happened[]): Promise<NoticeProps | null>;
  onDone(events: readonly Happened[]): void;
}

export const problemsNotice = (n: number): NoticeProps => ({ heading: DRAWER.looksHeading(n), ...DRAWER.looks });

export function FormPage(props: FormPageProps) {
  const { draft, change } = props;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [notice, setNotice] = useState<NoticeProps | null>(null);
  const [busy, setBusy] = useState(false);
  const save = async () => {
    if (busy) return;
    setBusy(true);
    const answer = await props.decide(draft);
    if (!("ok" in answer)) setNotice(answer);
    else if (answer.ok) {
      const refused = await props.store(answer.events);
      setProblems([]);
      if (refused === null) props.onDone(answer.events);
      else setNotice(refused);
    } else if ("notFor" in answer) {
      setProblems([]);
      setNotice({ heading: DRAWER.notForHeading, got: "Your answers were read.", wrong: notFor(answer.notFor), todo: NOT_FOR_TODO });
    } else {
      setProblems(answer.problems);
      setNotice(problemsNotice(answer.problems.length));
    }
    setBusy(false);
  };
  return (
    <Page
      title={props.title}
      lines={props.lines ?? []}
      notice={notice}
      actions={
        <>
          {props.back ? <BigButton role="choice" safe {...props.back} /> : null}
          {props.extra}
          <BigButton role="main" label={props.save} onPress={() => void save()} />
        </>
      }
    >
      <Form
        sections={props.sections}
        draft={draft}
        problems={problems}
        glucose={props.glucose ?? ""}
        onChange={(field, value) => change((before) => ({ ...before, [field]: value }))}
      />
    </Page>
  );
}

interface PageProps extends DraftKept {
  drawer: DrawerProps;
  keep: Keep;
  back?: { label: string; onPress: () => void };
  extra?: ComponentChildren;
}

export function HouseholdPage({ drawer, keep, onDone, ...page }: PageProps & { onDone(): void }) {
  const known = drawer.house.household;
  // The country brings its usual number, which stays as typed once somebody typed one.
  const change = (update: (draft: Draft) => Draft) =>
    page.change((before) => {
      const next = update(before);
      const country = next["household.country"];
      const chosen = country !== before["household.country"] && (country === "US" || country === "UK");
      const usual = chosen && ["", "911", "999"].includes(next["household.emergencyNumber"] ?? "");
      return usual ? { ...next, "household.emergencyNumber": USUAL_EMERGENCY[country] } : next;
    });
  return (
    <FormPage
      {...page}
      change={change}
      title={known ? DRAWER.householdChange : DRAWER.householdTitle}
      lines={known ? [] : [DRAWER.householdIntro]}
      sections={HOUSEHOLD}
      save={DRAWER.save}
      decide={(draft) => setHousehold(draft, known?.kind ?? "home")}
      store={(events) => keep(null, events)}
      onDone={onDone}
    />
  );
}

export function KeeperPage({ drawer, keep, first, onDone, ...page }: PageProps & { first: boolean; onDone(keeper: KeeperHere): void }) {
  const decide = async (draft: Draft): Promise<Answer | NoticeProps> => {
    const problems = keeperProblems(draft, drawer.house.keepers);
    if (problems.length > 0) return { ok: false, problems };
    const pin = await drawer.hashPin((draft["keeper.pin"] ?? "").trim());
    if (pin === "not supported") return { heading: DRAWER.noCheckHeading, ...DRAWER.noCheck };
    return { ok: true, events: addKeeper(draft, drawer.newId(), pin) };
  };
  return (
    <FormPage
      {...page}
      title={first ? DRAWER.firstKeeperTitle : DRAWER.keeperTitle}
      lines={first ? [DRAWER.firstKeeperIntro] : []}
      sections={KEEPER}
      save={DRAWER.keeperSave}
      decide={decide}
      store={(events) => keep(null, events)}
      onDone={([event]) => {
        if (event?.type === "keeper added") onDone({ id: event.keeper.id, name: event.keeper.name });
      }}
    />
  );
}

export const startOfPerson = (me: PersonState | null): Draft => (me ? draftOfPerson(me.person) : {});

export function PersonPage({
  drawer,
  keep,
  me,
  keeper,
  onDone,
  ...page
}: PageProps & { me: PersonState | null; keeper: KeeperHere; onDone(): void }) {
  const others = Object.values(drawer.house.people).flatMap((p) => (p === me ? [] : [p.person]));
  const [id] = useState(() => me?.person.id ?? drawer.newId());
  return (
    <FormPage
      {...page}
      title={me ? DRAWER.editPerson(me.person.name) : DRAWER.personTitle}
      sections={personSections(me === null)}
      glucose={page.draft["person.glucoseUnit"] ?? ""}
      save={DRAWER.save}
      decide={(draft) => (me ? changePerson(draft, id, others, keeper.id) : addPerson(draft, id, others))}
      store={(events) => keep(id, events)}
      onDone={onDone}
    />
  );
}

export function PenPage({ drawer, keep, me, onDone, ...page }: PageProps & { me: PersonState; onDone(): void }) {
  const others = Object.values(drawer.house.people).flatMap((p) => p.pens.flatMap((kept) => (kept.retired ? [] : [kept.pen])));
  const [id] = useState(() => drawer.newId());
  const cardInsulin = me.card?.card.insulin ?? null;
  const cardBackground = backgroundInsulins(me.card?.card ?? null);
  return (
    <FormPage
      {...page}
      title={DRAWER.penTitle(me.person.name)}
      sections={penSections(page.draft, cardInsulin !== null)}
      save={DRAWER.save}
      decide={(draft) => addPen(draft, { id, person: me.person.id, today: drawer.today, others, cardInsulin, cardBackground })}
      store={(events) => keep(me.person.id, events)}
      onDone={onDone}
    />
  );
}
