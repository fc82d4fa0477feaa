import { join } from "node:path";
import { renderY4m } from "../demo-golfer/render-y4m.ts";
import { usualShow } from "../demo-golfer/demo-show.ts";

/**
 * One slow rehearsal with an orange rod beyond the butt, small and at few pictures a second: enough to set a phone up by. `playedAt`: pictures a
 * second that it is played at.
 */
export async function shortFilm(folder: string, playedAt = 8): Promise<string> {
  const file = join(folder, "rehearsal.y4m");
  await renderY4m(
    file,
    { ...usualShow, width: 360, height: 640, framesPerSecond: 8, reps: 1, rodBeyondButt: 0.5 },
    playedAt,
  );
  return file;
}
