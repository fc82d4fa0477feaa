import { useEffect, useRef } from "react";
import { useSettings } from "./parts.ts";

export interface Choice {
  readonly id: string;
  readonly label: string;
  readonly onChoose: () => void;
  /** What Escape does, where the list stands in front of something. */
  readonly closes?: boolean;
}

/** With one button the highlight goes on by itself, slowly enough to press in time. Milliseconds. */
const scanEvery = 1600;

/** Large buttons of which one is always in focus, for fingers, arrow keys, a presenter's two keys, or a single button. */
export function ChoiceList({ choices, label }: { readonly choices: readonly Choice[]; readonly label: string }) {
  const list = useRef<HTMLUListElement>(null);
  const oneButton = useSettings((settings) => settings.oneButton);
  useEffect(() => {
    list.current?.querySelector("button")?.focus();
  }, []);
  useEffect(() => {
    if (!oneButton) return;
    const timer = setInterval(() => {
      if (list.current !== null) moveFocus(list.current, 1);
    }, scanEvery);
    return () => {
      clearInterval(timer);
    };
  }, [oneButton]);
  return (
    <ul className="choice-list" aria-label={label} ref={list} data-choices>
      {choices.map((choice, index) => (
        <li key={choice.id}>
          <button
            type="button"
            data-choice={choice.id}
            data-close={choice.closes === true ? true : undefined}
            onClick={choice.onChoose}
          >
            <span className="choice-number" aria-hidden="true">
              {index + 1}
            </span>
            {choice.label}
          </button>
        </li>
      ))}
    </ul>
  );
}

/** Focus to the next or the previous button of a list, round and round. */
export function moveFocus(list: Element, by: 1 | -1): void {
  const buttons = [...list.querySelectorAll("button")];
  const at = buttons.findIndex((button) => button === document.activeElement);
  buttons[(at + by + buttons.length) % buttons.length]?.focus();
}
