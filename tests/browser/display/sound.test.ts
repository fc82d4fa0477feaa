import { join } from "node:path";
import { notCountedWords } from "@overcue/client-display/words/reasons";
import type { Tone } from "@overcue/client-display/sound/tone-of";
import type { Verdict } from "@overcue/shared-geometry/wire/practice";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { build } from "vite";
import { checkpointTold, demoAims, practiceState, readingAt, repIds, sure } from "../../fakes/practice-scenes.ts";
import { startScriptedRelay, type ScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { builtPages } from "./pages-folder.ts";
import { setStage, views } from "./views.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});

const sampleRate = 44_100;
const seconds = 0.3;

/** The tone's own code in a page of Chromium, rendered by its Web Audio faster than time and without a loudspeaker. */
async function renderTones(tones: readonly Tone[]): Promise<readonly (readonly [number[], number[]])[]> {
  const source = join(import.meta.dirname, "../../../client-display/src/sound/play-tone.ts");
  const made = await build({
    configFile: false,
    logLevel: "warn",
    build: { write: false, minify: false, lib: { entry: source, name: "overcueTone", formats: ["iife"] } },
  });
  const [bundle] = Array.isArray(made) ? made : [];
  if (bundle === undefined) throw new Error("the tone was not built");
  const page = await browser.newPage();
  try {
    await page.addScriptTag({ content: bundle.output[0].code });
    return await page.evaluate(
      async ({ wanted, rate, length }) => {
        const { overcueTone } = window as unknown as {
          overcueTone: { playTone: (context: BaseAudioContext, tone: Tone) => void };
        };
        const rendered: [number[], number[]][] = [];
        for (const tone of wanted) {
          const context = new OfflineAudioContext(2, rate * length, rate);
          overcueTone.playTone(context, tone);
          const buffer = await context.startRendering();
          rendered.push([[...buffer.getChannelData(0)], [...buffer.getChannelData(1)]]);
        }
        return rendered;
      },
      { wanted: [...tones], rate: sampleRate, length: seconds },
    );
  } finally {
    await page.close();
  }
}

const part = (samples: readonly number[], from: number, to: number): readonly number[] =>
  samples.slice(Math.round(from * sampleRate), Math.round(to * sampleRate));
const loudness = (samples: readonly number[]): number =>
  Math.sqrt(samples.reduce((sum, value) => sum + value * value, 0) / samples.length);
/** Pitch in hertz by counting where the wave goes up through nothing. */
function pitch(samples: readonly number[]): number {
  const ups = samples.flatMap((value, at) => (at > 0 && value >= 0 && (samples[at - 1] ?? 0) < 0 ? [at] : []));
  const [first, last] = [ups.at(0), ups.at(-1)];
  if (first === undefined || last === undefined || first === last) return NaN;
  return ((ups.length - 1) * sampleRate) / (last - first);
}

describe("the tones as Chromium's Web Audio renders them", () => {
  test("D12 inside rises, outside falls, too close to call stays; left is beyond the band, right is towards the heels", async () => {
    const [inside, beyond, short, level] = await renderTones([
      { slide: "rising", pan: 0 },
      { slide: "falling", pan: -1 },
      { slide: "falling", pan: 1 },
      { slide: "level", pan: 0 },
    ]);
    if (!inside || !beyond || !short || !level) throw new Error("four tones were asked for");
    const slide = ([left, right]: readonly [number[], number[]]): number => {
      const both = left.map((value, at) => value + (right[at] ?? 0));
      return pitch(part(both, 0.11, 0.16)) / pitch(part(both, 0, 0.05));
    };
    expect(slide(inside)).toBeGreaterThan(1.2);
    expect(slide(beyond)).toBeLessThan(0.83);
    expect(slide(short)).toBeLessThan(0.83);
    expect(slide(level)).toBeCloseTo(1, 1);
    const leftOverRight = ([left, right]: readonly [number[], number[]]): number => loudness(left) / loudness(right);
    expect(leftOverRight(beyond)).toBeGreaterThan(4);
    expect(leftOverRight(short)).toBeLessThan(1 / 4);
    expect(leftOverRight(inside)).toBeCloseTo(1, 3);
  });

  test("D12 a tone is short, never louder than meant, and neither begins nor ends with a click", async () => {
    for (const [left, right] of await renderTones([
      { slide: "rising", pan: 0 },
      { slide: "falling", pan: -1 },
    ])) {
      const heard = loudness(left) > loudness(right) ? left : right;
      expect(loudness(part(heard, 0, 0.16))).toBeGreaterThan(0.05);
      expect(loudness(part(heard, 0.165, seconds))).toBeLessThan(1e-6);
      expect(Math.max(...heard.map(Math.abs))).toBeLessThanOrEqual(0.4);
      // A triangle wave of 784 Hz and 0.35 goes 0.025 a sample; a click is a jump many times that.
      const jumps = heard.map((value, at) => Math.abs(value - (heard[at - 1] ?? 0)));
      expect(Math.max(...jumps)).toBeLessThan(0.05);
    }
  });
});

/** What the page put out, as an ear at its loudspeaker would have it. */
interface Ear {
  contexts: number;
  loudest: [left: number, right: number];
  spoken: string[];
}

describe("sound on the ground screen", () => {
  let relay: ScriptedRelay;
  let page: Page;
  let revision: number;

  beforeEach(async () => {
    relay = await startScriptedRelay({ pages: builtPages() });
    page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    revision = 10;
  });
  afterEach(async () => {
    await page.close();
    await relay.close();
  });

  /** The practice view of a golfer whose sound nobody muted, with an ear on whatever reaches the loudspeaker. */
  async function openWith(settings: Readonly<Record<string, unknown>>): Promise<void> {
    await page.addInitScript((stored) => {
      localStorage.setItem("overcue-screen", JSON.stringify({ cautionsRead: true, ...stored }));
      const ear: Ear = { contexts: 0, loudest: [0, 0], spoken: [] };
      Object.assign(window, { overcueEar: ear });
      const RealContext = window.AudioContext;
      window.AudioContext = class extends RealContext {
        constructor(options?: AudioContextOptions) {
          super(options);
          ear.contexts++;
        }
      };
      const connect = Reflect.get(AudioNode.prototype, "connect") as (
        this: AudioNode,
        ...to: readonly [AudioNode, number?, number?]
      ) => AudioNode;
      AudioNode.prototype.connect = function listening(
        this: AudioNode,
        ...to: [AudioNode, number?, number?]
      ): AudioNode {
        if (to[0] instanceof AudioDestinationNode) {
          const splitter = this.context.createChannelSplitter(2);
          connect.call(this, splitter);
          for (const side of [0, 1] as const) {
            const analyser = new AnalyserNode(this.context, { fftSize: 32_768 });
            connect.call(splitter, analyser, side);
            const samples = new Float32Array(analyser.fftSize);
            const listen = (): void => {
              analyser.getFloatTimeDomainData(samples);
              ear.loudest[side] = samples.reduce((most, value) => Math.max(most, Math.abs(value)), ear.loudest[side]);
              if (this.context.state !== "closed") setTimeout(listen, 100);
            };
            listen();
          }
        }
        return connect.call(this, ...to);
      } as typeof AudioNode.prototype.connect;
      // No machine without a loudspeaker has a voice: what would be said is kept instead.
      SpeechSynthesis.prototype.speak = ({ text }) => {
        ear.spoken.push(text);
      };
    }, settings);
    const [first] = views;
    if (first === undefined) throw new Error("no views");
    setStage(relay, first);
    relay.say.peers({ capture: 1, display: 1, coach: 0 });
    relay.say.practice(practiceState({ muted: false }));
    await page.goto(relay.address("ground"));
    // The first click is what lets a page be heard at all.
    await page.click("[data-main]");
    await page.waitForSelector("[data-screen=practice]");
  }

  const ear = async (): Promise<Ear> =>
    await page.evaluate(() => (window as unknown as { overcueEar: Ear }).overcueEar);
  function passCheckpoint(y: number, repId: string = repIds[1]): void {
    const reading = readingAt("arm-level-back", Date.now() - 90, y, sure("toe-line"), 0.01);
    relay.say.checkpoint(checkpointTold(repId, reading));
  }
  function answer(kind: Verdict["kind"], sentence: string, repId: string): void {
    revision++;
    relay.say.practice(practiceState({ muted: false, revision, verdict: { repId, kind, sentence, places: [] } }));
  }
  /** Everything said before has reached the page and its sound when this resolves: messages keep their order. */
  async function settle(): Promise<void> {
    revision++;
    relay.say.practice(practiceState({ muted: false, revision, view: "session" }));
    await page.waitForSelector("[data-screen=session]");
    revision++;
    relay.say.practice(practiceState({ muted: false, revision }));
    await page.waitForSelector("[data-screen=practice]");
  }

  test("D12 is off unless asked for: no tone, no voice, not even a sound device opened", async () => {
    await openWith({});
    passCheckpoint(0.575);
    answer("answer", "Back: ball to toes.", repIds[1]);
    await settle();
    expect(await ear()).toEqual({ contexts: 0, loudest: [0, 0], spoken: [] });
    await page.keyboard.press(",");
    expect(await page.getByLabel("A tone at each checkpoint").isChecked()).toBe(false);
    expect(await page.getByLabel("The sentence after the rep, spoken").isChecked()).toBe(false);
  });

  test("D12 a checkpoint outside the band is heard on its side, and the delay is measured and shown", async () => {
    await openWith({});
    await page.keyboard.press(",");
    const sound = page.locator("section", { hasText: "A tone at each checkpoint" }).last();
    await expect.poll(() => sound.textContent()).toContain("Play a tone to measure the delay.");
    await page.getByLabel("A tone at each checkpoint").click();
    const felt = demoAims[0]?.felt ?? { from: NaN, to: NaN };
    // The page may still be waking its sound: the golfer has another rep, and so has the test.
    await expect
      .poll(
        async () => {
          passCheckpoint(felt.from - 0.3, crypto.randomUUID());
          await new Promise((resolve) => setTimeout(resolve, 600));
          return (await ear()).loudest[0];
        },
        { timeout: 30_000 },
      )
      .toBeGreaterThan(0.1);
    const { loudest } = await ear();
    expect(loudest[0]).toBeGreaterThan(4 * loudest[1]);
    const words = (await sound.textContent()) ?? "";
    expect(words).toMatch(/This device plays \d+ ms after it is told to\./);
    const late = Number(/The last tone came (\d+) ms after/.exec(words)?.[1] ?? NaN);
    const own = Number(/This device plays (\d+) ms/.exec(words)?.[1] ?? NaN);
    // The checkpoint lay 90 ms back when it was told.
    expect(late).toBeGreaterThanOrEqual(90 + own - 1);
  });

  test("D12 warns that wireless headphones lag and that others stand beside", async () => {
    await openWith({});
    await page.keyboard.press(",");
    await page.getByText("Wireless headphones often lag another 100 to 250 ms").waitFor();
    expect(await page.getByText("Beside others on a range, leave sound off.").isVisible()).toBe(true);
  });

  test("D12 the sentence is spoken only where it is wanted, and not where nothing is wrong", async () => {
    await openWith({ speech: true });
    answer("answer", "Back: ball to toes.", repIds[1]);
    answer("inside", "Back: ball line. Same again.", repIds[2]);
    answer("summary", "Block: back: toe line.", repIds[3]);
    relay.say.noRep({ repId: repIds[4], why: null });
    relay.say.noRep({ repId: repIds[4], why: "club-lost" });
    await settle();
    expect((await ear()).spoken).toEqual([
      "Back: ball to toes.",
      "Block: back: toe line.",
      notCountedWords["club-lost"],
    ]);
  });

  test("D12 a muted practice, a pause and a silent rep make no sound", async () => {
    await openWith({ tones: true, speech: true });
    for (const quiet of [{ muted: true }, { muted: false, paused: true }, { muted: false, nextRepAnswered: false }]) {
      revision++;
      relay.say.practice(practiceState({ ...quiet, revision }));
      passCheckpoint(0, crypto.randomUUID());
    }
    revision++;
    relay.say.practice(
      practiceState({
        muted: true,
        revision,
        verdict: { repId: repIds[2], kind: "answer", sentence: "Back: ball to toes.", places: [] },
      }),
    );
    await settle();
    const { loudest, spoken } = await ear();
    expect(loudest).toEqual([0, 0]);
    expect(spoken).toEqual([]);
  });
});
