/** Sizes in pixels, both even. */
export interface CodeSettings {
  readonly width: number;
  readonly height: number;
  readonly framesPerSecond: number;
  readonly bitsPerSecond: number;
}

/** Runs inside of the browser's page, by itself: takes pictures from /next, codes them, decodes them and posts them to /coded, planes of I420 one after the other. */
export async function codeInPage({ width, height, framesPerSecond, bitsPerSecond }: CodeSettings): Promise<void> {
  /** Pictures under way at once, at most. */
  const room = 8;
  // Main profile, level 4.2: 1080x1920 at 60 a second.
  const codec = "avc1.4d002a";
  const coding = { codec, width, height, bitrate: bitsPerSecond, framerate: framesPerSecond };
  const { supported } = await VideoEncoder.isConfigSupported(coding);
  if (supported !== true) throw new Error("This Chromium has no H.264 encoder.");
  const failures: unknown[] = [];
  const noteFailure = (error: unknown): void => {
    failures.push(error);
  };
  const goesWell = (): boolean => failures.length === 0;
  let underWay = 0;
  let posted: Promise<void> = Promise.resolve();
  const post = async (frame: VideoFrame): Promise<void> => {
    const planes = new Uint8Array(1.5 * width * height);
    if (frame.format !== "I420") throw new Error(`A decoded picture came as ${String(frame.format)}, not as I420.`);
    await frame.copyTo(planes);
    frame.close();
    await fetch("/coded", { method: "POST", body: planes });
    underWay--;
  };
  const decoder = new VideoDecoder({
    output: (frame) => {
      posted = posted.then(() => post(frame)).catch(noteFailure);
    },
    error: noteFailure,
  });
  const encoder = new VideoEncoder({
    output: (chunk, about) => {
      if (about?.decoderConfig) decoder.configure(about.decoderConfig);
      decoder.decode(chunk);
    },
    error: noteFailure,
  });
  encoder.configure(coding);
  for (let index = 0; goesWell(); index++) {
    const answer = await fetch("/next");
    if (answer.status === 204) break;
    const frame = new VideoFrame(await answer.arrayBuffer(), {
      format: "I420",
      codedWidth: width,
      codedHeight: height,
      timestamp: Math.round((index * 1e6) / framesPerSecond),
    });
    // A key picture every other second, as phones do.
    encoder.encode(frame, { keyFrame: index % Math.round(2 * framesPerSecond) === 0 });
    frame.close();
    underWay++;
    // A decoder may hold a few back until the end.
    for (let waited = 0; underWay > room && goesWell() && waited < 50; waited++) {
      await new Promise((ready) => setTimeout(ready, 2));
    }
  }
  if (goesWell()) {
    await encoder.flush();
    await decoder.flush();
  }
  await posted;
  if (!goesWell()) throw failures[0] as Error;
}
