import { makePictureQueue } from "./picture-queue.ts";

/** A picture as it came out of a live track. `stamp`: the track's own time; `arrived`: the page's clock. Milliseconds. */
export interface TakenPicture {
  readonly image: VideoFrame | ImageBitmap;
  readonly stamp: number;
  readonly arrived: number;
}

export interface TrackReader {
  readonly width: number;
  readonly height: number;
  /** The next picture that has not been given yet; null when the track has ended or the reader was closed. */
  next(): Promise<TakenPicture | null>;
  /** How many pictures the track has given since the first `next` that `next` never gave, as far as the browser tells. */
  missed(): number;
  /** How many are there already for `next`. */
  waiting(): number;
  close(): void;
}

/** The quickest way that this browser has to read a live track. */
export async function readTrack(track: MediaStreamTrack): Promise<TrackReader> {
  return "MediaStreamTrackProcessor" in globalThis ? await readByProcessor(track) : await readByVideo(track);
}

/** Pictures that wait for `next`: enough to bridge a look that takes long. Up: misses fewer, shows older ones. */
const room = 2;
/** Pictures that the browser keeps for a busy page. */
const browsersRoom = 2;

/** W3C mediacapture-transform; not in the DOM types. */
declare class MediaStreamTrackProcessor {
  constructor(init: { track: MediaStreamTrack; maxBufferSize?: number });
  readonly readable: ReadableStream<VideoFrame>;
}

/** W3C mediacapture-extensions; not in the DOM types, nor in every browser. */
interface CountedTrack extends MediaStreamTrack {
  readonly stats?: { readonly deliveredFrames?: number };
}

/** Every picture is read as it comes, so that the ones that nobody has time for are counted here and not lost unseen. */
async function readByProcessor(track: CountedTrack): Promise<TrackReader> {
  const reader = new MediaStreamTrackProcessor({ track, maxBufferSize: browsersRoom }).readable.getReader();
  const queue = makePictureQueue<TakenPicture>(room, ({ image }) => {
    image.close();
  });
  const given = (): number => track.stats?.deliveredFrames ?? 0;
  let givenBefore: number | null = null;
  let read = 0;
  let unread = 0;
  /** What the track has given and the page was too busy to read; up to `browsersRoom` may still be waiting for it. */
  const countUnread = (): void => {
    if (givenBefore !== null) unread = Math.max(unread, given() - givenBefore - read - browsersRoom);
  };
  const take = async (): Promise<TakenPicture | null> => {
    const { value, done } = await reader.read();
    return done ? null : { image: value, stamp: value.timestamp / 1000, arrived: performance.now() };
  };
  const readOn = async (): Promise<void> => {
    for (let picture = await take(); picture !== null; picture = await take()) {
      read++;
      countUnread();
      queue.put(picture);
    }
    queue.end();
  };
  // The first picture says how large the pictures really are: settings speak of an unrotated sensor on some phones.
  const first = await take();
  if (first === null) throw new Error("The camera gives no picture: close other programs that use it.");
  const { displayWidth: width, displayHeight: height } = first.image as VideoFrame;
  first.image.close();
  return {
    width,
    height,
    async next() {
      if (givenBefore === null) {
        givenBefore = given();
        readOn().catch(() => {
          queue.end();
        });
      }
      return await queue.take();
    },
    missed: () => queue.missed() + unread,
    waiting: () => queue.waiting(),
    close() {
      queue.end();
      void reader.cancel();
    },
  };
}

/** Safari's and Firefox's way: the video element says when a picture is shown, and a bitmap is made of it. */
async function readByVideo(track: MediaStreamTrack): Promise<TrackReader> {
  const video = document.createElement("video");
  video.muted = true;
  video.playsInline = true;
  video.srcObject = new MediaStream([track]);
  await video.play();
  let lastStamp = Number.NEGATIVE_INFINITY;
  let closed = false;
  let lastShown: number | null = null;
  let missed = 0;
  const ended = new Promise<null>((resolve) => {
    track.addEventListener("ended", () => {
      resolve(null);
    });
  });
  const shown = (): Promise<{ stamp: number; arrived: number }> =>
    new Promise((resolve) => {
      video.requestVideoFrameCallback((now, { captureTime, mediaTime, presentedFrames }) => {
        if (lastShown !== null) missed += Math.max(0, presentedFrames - lastShown - 1);
        lastShown = presentedFrames;
        // Remote or older cameras have no capture time; the media time runs evenly with them.
        resolve({ stamp: captureTime ?? mediaTime * 1000, arrived: now });
      });
    });
  return {
    width: video.videoWidth,
    height: video.videoHeight,
    async next() {
      for (;;) {
        const at = await Promise.race([shown(), ended]);
        if (at === null || closed) return null;
        if (at.stamp === lastStamp) continue;
        lastStamp = at.stamp;
        return { image: await createImageBitmap(video), ...at };
      }
    },
    missed: () => missed,
    waiting: () => 0,
    close() {
      closed = true;
      video.pause();
      video.srcObject = null;
    },
  };
}
