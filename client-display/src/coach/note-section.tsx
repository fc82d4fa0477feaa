import type { PracticeCommand, SessionView } from "@overcue/shared-geometry/wire/practice";
import { useState } from "react";

export interface NoteSectionProps {
  readonly notes: SessionView["notes"];
  /** Resolves to true when the note is in the book. */
  readonly ask: (command: PracticeCommand) => Promise<boolean>;
}

export function NoteSection({ notes, ask }: NoteSectionProps) {
  const [text, setText] = useState("");
  return (
    <section>
      <h2>Note</h2>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          // What was typed stays until the book has it.
          void ask({ do: "note", text: text.trim() }).then((kept) => {
            if (kept) setText("");
          });
        }}
      >
        <textarea
          aria-label="Note for the book"
          maxLength={2000}
          value={text}
          onChange={(event) => {
            setText(event.target.value);
          }}
        />
        <button type="submit" disabled={text.trim() === ""}>
          Keep the note
        </button>
      </form>
      <ul>
        {notes
          .slice(-3)
          .reverse()
          .map((note) => (
            <li key={note.at}>
              {note.by}: {note.text}
            </li>
          ))}
      </ul>
    </section>
  );
}
