import type { PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import { metres } from "@overcue/shared-geometry/units";
import { inCentimetres } from "../view/words.ts";

/** What was done, for the others to read after the name of who did it: "Anna: voided a rep". */
export function describeCommand(command: PracticeCommand): string {
  switch (command.do) {
    case "void-rep":
      return "voided a rep";
    case "restore-rep":
      return "restored a rep";
    case "star-rep":
      return command.starred ? "starred a rep" : "took a star off";
    case "correct-reading":
      return command.y === null ? "left out a reading" : "corrected a reading";
    case "set-stage":
    case "next-stage":
      return "changed the stage";
    case "set-drill":
      return "changed the drill";
    case "set-wanted":
      return "changed what is wanted";
    case "set-exaggeration":
      return `set exaggerate by to ${inCentimetres(metres(command.metres))}`;
    case "accept-proposal":
      return "agreed to the next cue";
    case "decline-proposal":
      return "kept the cue";
    case "lock-cue":
      return command.locked ? "locked the cue" : "unlocked the cue";
    case "set-cue-mode":
      return command.cueMode === "adaptive" ? "lets the cue adapt" : "sets the cue by hand";
    case "answer-felt":
    case "skip-felt":
      return "answered what it felt like";
    case "ask-felt":
      return command.asked ? "asks what it felt like" : "stopped asking what it felt like";
    case "set-feedback":
      return "changed how often the answer is told";
    case "pause":
      return command.paused ? "paused" : "went on";
    case "mute":
      return command.muted ? "muted the sound" : "turned the sound on";
    case "view":
      return `switched the screen to ${command.view}`;
    case "note":
      return "wrote a note";
    case "start-baseline":
      return "started a baseline";
    case "start-practice":
      return "started practice";
    case "start-retention-test":
      return "started a test without feedback";
    case "add-golfer":
      return "added a golfer";
    case "choose-golfer":
      return "changed the golfer";
    case "delete-golfer":
      return "deleted a golfer";
    case "set-station":
      return "changed the station";
    case "copy-drill":
      return "copied a drill";
    case "save-drill":
      return "saved a drill";
    case "delete-drill":
      return "deleted a drill";
  }
}
