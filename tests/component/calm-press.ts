// Presses as a calm hand makes them: long after the screen changed, so that the guard lets them through. One clock for guard and hand.
import { fireEvent, screen } from "@testing-library/preact";
import { makeGuard } from "#ui/guards.ts";

let clock = 0;
export const guard = makeGuard(() => clock);
export const wait = (ms: number): void => {
  clock += ms;
};

export const press = (name: string | RegExp): void => {
  wait(5000);
  fireEvent.click(screen.getByRole("button", { name }));
};

export const pressKey = (name: string, key: string): void => {
  wait(5000);
  const button = screen.getByRole("button", { name });
  button.focus();
  fireEvent.keyDown(button, { key });
  fireEvent.keyUp(button, { key });
};

export const buttons = () => screen.getAllByRole("button").map((button) => button.textContent);

/** Turns pages until the choice is there, then presses it. */
export const pick = (name: string): void => {
  for (let turn = 0; turn < 30 && screen.queryByRole("button", { name }) === null; turn++) press("More");
  press(name);
};
