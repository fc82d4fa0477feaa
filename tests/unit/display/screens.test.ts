import { keyAction, type KeyContext } from "@overcue/client-display/actions/key-action";
import { menuItems } from "@overcue/client-display/actions/menu-items";
import { draftAim, exaggerationWords } from "@overcue/client-display/coach/draft-aim";
import { blockColumns, stageRuns } from "@overcue/client-display/history/block-columns";
import { chooseScreen } from "@overcue/client-display/screens/choose-screen";
import { setUpList } from "@overcue/client-display/screens/set-up-list";
import { correctedIn, verdictMarks } from "@overcue/client-display/screens/verdict-marks";
import { toneOf } from "@overcue/client-display/sound/tone-of";
import {
  defaultDisplaySettings,
  moveToPlace,
  readDisplaySettings,
} from "@overcue/client-display/store/display-settings";
import { followChange } from "@overcue/client-display/store/follow-change";
import { createScreenStore } from "@overcue/client-display/store/screen-store";
import { createUiStore } from "@overcue/client-display/store/ui-store";
import { cautionWords } from "@overcue/client-display/words/calibration-words";
import { heldWords } from "@overcue/client-display/words/held-words";
import { bandIds } from "@overcue/shared-geometry/bands";
import { describe, expect, test } from "vitest";
import {
  captureState,
  checkpointTold,
  demoAims,
  demoSessionView,
  liveEstimate,
  practiceState,
  readingAt,
  repIds,
  sceneLayout,
  sure,
} from "../../fakes/practice-scenes.ts";

const [back] = demoAims;
if (back === undefined) throw new Error("the scene has an aim");

describe("D8 silence", () => {
  test("D8 nothing is said of the club in a baseline, a test, a silent rep, a pause, the quiet view, without a phone", () => {
    expect(heldWords(practiceState(), 1)).toBeNull();
    expect(heldWords(practiceState(), 0)).toBe("phone away");
    for (const changes of [
      { mode: "baseline" as const },
      { mode: "retention-test" as const },
      { nextRepAnswered: false },
      { paused: true },
      { view: "quiet" as const },
    ]) {
      expect(heldWords(practiceState(changes), 1)).not.toBeNull();
    }
  });

  test("D8 a baseline says which rep comes and that there is no feedback, and never one more than there are", () => {
    const after = (repsInBlock: number) =>
      heldWords(practiceState({ mode: "baseline", repsInBlock, blockSize: 7, nextRepAnswered: false }), 1);
    expect(after(0)).toBe("baseline:\nrep 1 of 7\nno feedback");
    expect(after(2)).toBe("baseline:\nrep 3 of 7\nno feedback");
    expect(after(7)).toBe("baseline:\nrep 7 of 7\nno feedback");
  });

  test("D8 in a baseline a camera that nobody measured is said to count nothing; elsewhere the answer says it", () => {
    const baseline = practiceState({ mode: "baseline" });
    expect(cautionWords("uncalibrated", baseline)).toBe("uncalibrated\nnot counted");
    expect(cautionWords("suspect", baseline)).toBe("camera moved?\nnot counted");
    expect(cautionWords("station", baseline)).toBe("");
    expect(cautionWords("demo", baseline)).toBe("demo golfer");
    expect(cautionWords("uncalibrated", practiceState())).toBe("uncalibrated");
  });
});

describe("D10 keys", () => {
  const at = (front: KeyContext["front"], more: Partial<KeyContext> = {}): KeyContext => ({
    front,
    asksBand: false,
    letterKeys: true,
    oneButton: false,
    ...more,
  });

  test("D10 two page keys reach everything: one opens, forward moves, back chooses", () => {
    expect(keyAction("PageDown", at("practice"))).toEqual({ kind: "menu" });
    expect(keyAction("PageDown", at("list"))).toEqual({ kind: "move", by: 1 });
    expect(keyAction("PageUp", at("list"))).toEqual({ kind: "choose" });
    expect(keyAction("PageDown", at("gate"))).toEqual({ kind: "choose" });
    expect(keyAction("PageUp", at("panel"))).toEqual({ kind: "close" });
  });

  test("D10 one button chooses, whichever of the two it sends", () => {
    for (const key of ["PageDown", "PageUp"]) {
      expect(keyAction(key, at("list", { oneButton: true }))).toEqual({ kind: "choose" });
      expect(keyAction(key, at("panel", { oneButton: true }))).toEqual({ kind: "close" });
    }
  });

  test("D10 sheets: forward turns, back closes; with one button the last sheet leads back to the ground", () => {
    expect(keyAction("PageDown", at("sheets"))).toEqual({ kind: "turn", by: 1, closes: false });
    expect(keyAction("PageUp", at("sheets"))).toEqual({ kind: "close" });
    expect(keyAction("Escape", at("sheets"))).toEqual({ kind: "close" });
    expect(keyAction("ArrowUp", at("sheets"))).toEqual({ kind: "turn", by: -1, closes: false });
    for (const key of ["PageDown", "PageUp"]) {
      expect(keyAction(key, at("sheets", { oneButton: true }))).toEqual({ kind: "turn", by: 1, closes: true });
    }
  });

  test("D10 1 to 7 answer which band it felt like, and only then", () => {
    for (const [index, band] of bandIds.entries()) {
      expect(keyAction(String(index + 1), at("list", { asksBand: true }))).toEqual({ kind: "felt", band });
    }
    expect(keyAction("8", at("list", { asksBand: true }))).toBeNull();
    expect(keyAction("1", at("list"))).toBeNull();
  });

  test("D10 single letters can be switched off (WCAG 2.2, 2.1.4); the presenter's blank key still pauses", () => {
    expect(keyAction("v", at("practice"))).toEqual({ kind: "void-rep" });
    expect(keyAction("v", at("practice", { letterKeys: false }))).toBeNull();
    expect(keyAction("b", at("practice", { letterKeys: false }))).toEqual({ kind: "pause" });
  });

  test("D10 the menu offers what the keys do, and what the practice waits for", () => {
    const ids = (changes: Parameters<typeof practiceState>[0]) =>
      menuItems(practiceState(changes), null).map(({ id }) => id);
    for (const id of ["pause", "void", "stage", "mute", "session", "quiet", "settings", "help", "codes", "set-up"]) {
      expect(ids({})).toContain(id);
    }
    expect(ids({})).not.toContain("accept");
    const proposal = { checkpoint: "arm-level-back" as const, exaggerateBy: 0.4, pastCap: false, reason: "" };
    expect(ids({ proposals: [proposal] })).toContain("accept");
    expect(ids({ retentionOffer: { kind: "next-day", sentence: "" } })).toContain("test");
    expect(menuItems(practiceState(), repIds[0]).map(({ id }) => id)).toContain("restore");
  });
});

describe("D11 set-up", () => {
  const readable = { meetsRule: true, readableFrom: 4, viewingDistance: 3 };

  test("D11 problems come before what is merely open, and the person's own tick last", () => {
    const checks = { "hand-line": "not-yet", "camera-height": "problem", sticks: "ok" } as const;
    const capture = captureState({ checks });
    const list = setUpList({ phones: 1, capture, spaceClear: false, readable });
    expect(list.next).toContain("hands");
    const fixed = setUpList({
      phones: 1,
      capture: captureState({ checks: { sticks: "ok" } }),
      spaceClear: false,
      readable,
    });
    expect(fixed.next).toContain("space clear");
    expect(setUpList({ phones: 1, capture: captureState(), spaceClear: true, readable }).next).toBeNull();
  });

  test("D11 a check that this page does not know is shown by its name, and a phone's warning is not lost", () => {
    const capture = captureState({ checks: { "sun-behind": "problem" }, warnings: ["The phone is hot."] });
    const list = setUpList({ phones: 1, capture, spaceClear: true, readable });
    expect(list.items.map(({ words }) => words)).toContain("Sun behind");
    expect(list.next).toContain("sun behind");
    const warned = setUpList({
      phones: 1,
      capture: captureState({ warnings: ["The phone is hot."] }),
      spaceClear: true,
      readable,
    });
    expect(warned.next).toBe("The phone is hot.");
  });

  test("D11 the phone's own words, with its number, go before this page's, and either place answers for the space", () => {
    const capture = captureState({
      checks: { "camera-height": "problem", "space-clear": "ok" },
      said: { "camera-height": { words: "Lens 1.62 m up", todo: "Lower the lens: it is 1.62 m up." } },
    });
    const list = setUpList({ phones: 1, capture, spaceClear: false, readable });
    expect(list.items.find(({ id }) => id === "camera-height")?.words).toBe("Lens 1.62 m up");
    expect(list.next).toBe("Lower the lens: it is 1.62 m up.");
    expect(list.items.filter(({ words }) => words.toLowerCase().includes("space"))).toHaveLength(1);
    expect(list.items.find(({ id }) => id === "space")?.state).toBe("ok");
  });

  test("D11 a screen too small for the distance says up to where it can be read", () => {
    const small = { meetsRule: false, readableFrom: 1.68, viewingDistance: 3 };
    expect(setUpList({ phones: 1, capture: captureState(), spaceClear: true, readable: small }).next).toContain(
      "1.7 m",
    );
  });

  test("D11 cautions come before set-up, once per place; a demo has nobody swinging", () => {
    const question = {
      link: { kind: "connected" as const },
      phones: 1,
      source: "camera" as const,
      cautionsRead: false,
      setUpDone: false,
      view: "live" as const,
    };
    expect(chooseScreen({ ...question, phones: 0 })).toBe("pairing");
    expect(chooseScreen(question)).toBe("cautions");
    expect(chooseScreen({ ...question, cautionsRead: true })).toBe("set-up");
    expect(chooseScreen({ ...question, cautionsRead: true, setUpDone: true })).toBe("practice");
    expect(chooseScreen({ ...question, cautionsRead: true, setUpDone: true, phones: 0 })).toBe("practice");
    expect(chooseScreen({ ...question, source: "demo" })).toBe("practice");
  });

  test("D11 what was set and read at a place comes back with the place", () => {
    const range = { ...defaultDisplaySettings, cautionsRead: true, viewingDistance: 2.2 };
    const home = moveToPlace(range, " Home mat ");
    expect(home).toMatchObject({ placeName: "Home mat", cautionsRead: false, viewingDistance: 3 });
    expect(moveToPlace({ ...home, theme: "dim" }, "Range")).toMatchObject({ cautionsRead: true, viewingDistance: 2.2 });
    expect(moveToPlace(range, "  ")).toBe(range);
  });

  test("D11 stored settings that are broken give the defaults and never an error", () => {
    for (const broken of ["", "{", "[]", '{"viewingDistance":"far"}', '{"viewingDistance":1e9}']) {
      expect(readDisplaySettings(broken)).toEqual(defaultDisplaySettings);
    }
    expect(readDisplaySettings('{"viewingDistance":2}').viewingDistance).toBe(2);
  });
});

describe("D9 the strip after a rep", () => {
  test("D9 says in, beyond, short, not sure and not read, in the order of the swing", () => {
    const place = (y: number, inWanted: boolean | null) => ({
      checkpoint: "arm-level-back" as const,
      y,
      sd: 0.02,
      inWanted,
      carryOver: null,
    });
    const markWith = (places: ReturnType<typeof place>[]) =>
      verdictMarks([back], { repId: repIds[0], kind: "answer", sentence: "", places }, new Set())[0]?.mark;
    expect(markWith([place(0, true)])).toBe("in");
    expect(markWith([place(-0.3, false)])).toBe("beyond");
    expect(markWith([place(0.3, false)])).toBe("short");
    expect(markWith([place(0.05, null)])).toBe("unsure");
    expect(markWith([])).toBe("not-read");
    const verdict = { repId: repIds[0], kind: "answer" as const, sentence: "", places: [] };
    const order = verdictMarks(demoAims.toReversed(), verdict, new Set());
    expect(order.map(({ checkpoint }) => checkpoint)).toEqual(["arm-level-back", "arm-level-down"]);
  });

  test("D9 names the checkpoints whose live answer this rep took back, and no other rep's", () => {
    const told = (repId: string, checkpoint: "arm-level-back" | "arm-level-down", corrects: boolean) =>
      checkpointTold(repId, readingAt(checkpoint, 0, 0, sure("ball-line")), corrects);
    const corrected = correctedIn(
      [
        told(repIds[0], "arm-level-back", true),
        told(repIds[0], "arm-level-down", false),
        told(repIds[1], "arm-level-down", true),
      ],
      repIds[0],
    );
    const verdict = { repId: repIds[0], kind: "answer" as const, sentence: "", places: [] };
    const strip = verdictMarks(demoAims, verdict, corrected);
    expect(strip.map((item) => [item.checkpoint, item.corrected])).toEqual([
      ["arm-level-back", true],
      ["arm-level-down", false],
    ]);
  });
});

describe("D12 sound", () => {
  const told = (y: number, sdY: number, corrects = false) => {
    const { readOuts } = liveEstimate(0, 0, { x: 0, y, sdY, band: sure("toe-line") });
    return checkpointTold(repIds[0], { checkpoint: "arm-level-back", at: 0, sdMs: 5, readOuts }, corrects);
  };

  test("D12 rising inside the band to be felt, falling outside on the side of the miss, level at its edge", () => {
    expect(toneOf(told(0.575, 0.01), demoAims)).toEqual({ slide: "rising", pan: 0 });
    expect(toneOf(told(0.2, 0.01), demoAims)).toEqual({ slide: "falling", pan: -1 });
    expect(toneOf(told(0.9, 0.01), demoAims)).toEqual({ slide: "falling", pan: 1 });
    expect(toneOf(told(0.62, 0.02), demoAims)).toEqual({ slide: "level", pan: 0 });
  });

  test("D12 no second tone for a correction, none for a checkpoint without an aim", () => {
    expect(toneOf(told(0.575, 0.01, true), demoAims)).toBeNull();
    expect(toneOf(told(0.575, 0.01), [])).toBeNull();
  });
});

describe("D17 who changed what", () => {
  const changedBy = (by: string, at: number, revision: number) =>
    practiceState({ revision, lastChange: { by, what: "changed the stage", at } });

  test("D17 the ground says what others changed, once, and neither its own nor what was changed before it opened", () => {
    const store = createScreenStore();
    const ui = createUiStore();
    followChange({ store, ui, ownName: "ground screen" });
    const noticeAfter = (practice: ReturnType<typeof practiceState>) => {
      ui.setState({ notice: null });
      store.setState({ practice });
      return ui.getState().notice;
    };
    expect(noticeAfter(changedBy("Robin (invented)", 1, 1))).toBeNull();
    expect(noticeAfter(changedBy("Robin (invented)", 2, 2))).toBe("Robin (invented): changed the stage.");
    // A rep moves the practice on without anybody's doing.
    expect(noticeAfter(changedBy("Robin (invented)", 2, 3))).toBeNull();
    expect(noticeAfter(changedBy("ground screen", 3, 4))).toBeNull();
    expect(noticeAfter(changedBy("Alex (invented)", 4, 5))).toBe("Alex (invented): changed the stage.");
  });
});

describe("D14 the books", () => {
  test("D14 blocks become columns in percent and centimetres, and what is missing stays missing", () => {
    const view = demoSessionView();
    const { blocks, checkpoints, columns } = blockColumns(view, "carryOver");
    expect(blocks).toEqual([1, 2, 3, 4, 5, 6]);
    expect(checkpoints).toEqual(["arm-level-back", "arm-level-down"]);
    expect(columns[0]?.[2]).toBeCloseTo(52, 9);
    const [first, ...rest] = view.blocks;
    if (first === undefined) throw new Error("the scene has blocks");
    const gap = { ...view, blocks: [{ ...first, places: [] }, ...rest] };
    expect(blockColumns(gap, "spread").columns[1]?.[0]).toBeNull();
  });

  test("D14 a stage that comes back is a run of its own", () => {
    const view = demoSessionView();
    expect(stageRuns(view)).toEqual([
      { stage: "slow-rehearsal", firstBlock: 1, lastBlock: 3 },
      { stage: "flow", firstBlock: 4, lastBlock: 5 },
      { stage: "added-speed", firstBlock: 6, lastBlock: 6 },
    ]);
  });

  test("D14 the coach's slider moves the felt band and leaves the wanted one", () => {
    const draft = draftAim(back, back.exaggerateBy + 0.3, sceneLayout);
    expect(draft.felt.from - back.felt.from).toBeCloseTo(0.3, 12);
    expect(draft.wanted).toEqual(back.wanted);
    expect(draft.feltBand).toBe("heel-line");
    expect(exaggerationWords(-0.254)).toBe("25 cm beyond");
    expect(exaggerationWords(0.004)).toBe("none");
  });
});
