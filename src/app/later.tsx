// A screen whose script comes when it is first wanted. It lies on the tablet already: only reading it waits.
import type { ComponentChildren, ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";

/** load: a dynamic import that gives the component. Shows nothing until it is there. */
export function later<Props extends object>(load: () => Promise<ComponentType<Props>>): (props: Props) => ComponentChildren {
  return function Later(props: Props) {
    const [Loaded, put] = useState<ComponentType<Props> | null>(null);
    useEffect(() => {
      void load().then((component) => put(() => component));
    }, []);
    return Loaded ? <Loaded {...props} /> : null;
  };
}
