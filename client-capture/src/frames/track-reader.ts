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
  close(): void;
}

/** The quickest way that this browser has to read a live track. */
export async function readTrack(track: MediaStreamTrack): Promise<TrackReader> {
  return "MediaStreamTrackProcessor" in globalThis ? await readByProcessor(track) : await readByVideo(track);
}

/** W3C mediacapture-transform; not in the DOM types. */
declare class MediaStreamTrackProcessor {
  constructor(init: { track: MediaStreamTrack; maxBufferSize?: number });
  readonly readable: ReadableStream<VideoFrame>;
}

async function readByProcessor(track: MediaStreamTrack): Promise<TrackReader> {
  const reader = new MediaStreamTrackProcessor({ track, maxBufferSize: 1 }).readable.getReader();
  const take = async (): Promise<TakenPicture | null> => {
    const { value, done } = await reader.read();
    return done ? null : { image: value, stamp: value.timestamp / 1000, arrived: performance.now() };
  };
  // The first picture says how large the pictures really are: settings speak of an unrotated sensor on some phones.
  let first = await take();
  if (first === null) throw new Error("The camera gives no picture: close other programs that use it.");
  const size = first.image as VideoFrame;
  return {
    width: size.displayWidth,
    height: size.displayHeight,
    async next() {
      const kept = first;
      first = null;
      if (kept === null) return await take();
      kept.image.close();
      return await take();
    },
    close() {
      first?.image.close();
      first = null;
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
  const ended = new Promise<null>((resolve) => {
    track.addEventListener("ended", () => {
      resolve(null);
    });
  });
  const shown = (): Promise<{ stamp: number; arrived: number }> =>
    new Promise((resolve) => {
      video.requestVideoFrameCallback((now, { captureTime, mediaTime }) => {
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
    close() {
      closed = true;
      video.pause();
      video.srcObject = null;
    },
  };
}
