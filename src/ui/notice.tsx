// Something was not as it must be, in three parts: what we got, what is wrong, what to do.

export interface NoticeProps {
  /** A plain noun first, for example "Number too big". */
  heading: string;
  got: string;
  wrong: string;
  todo: string;
}

export function Notice({ heading, got, wrong, todo }: NoticeProps) {
  return (
    <section class="notice" aria-label={heading}>
      <h2 class="notice-heading">{heading}</h2>
      <p>{got}</p>
      <p>{wrong}</p>
      <p class="notice-todo">{todo}</p>
    </section>
  );
}
