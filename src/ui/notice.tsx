// Something was not as it must be, in three parts: what we got, what is wrong, what to do.

export interface NoticeProps {
  /** A plain noun first, for example "Number too big"; left out where the title of the screen says it. */
  heading?: string;
  got: string;
  wrong: string;
  todo: string;
}

export function Notice({ heading, got, wrong, todo }: NoticeProps) {
  return (
    <div class="notice">
      {heading ? <h2 class="notice-heading">{heading}</h2> : null}
      <p>{got}</p>
      <p>{wrong}</p>
      <p class="notice-todo">{todo}</p>
    </div>
  );
}
