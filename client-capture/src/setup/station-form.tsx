import { useStore } from "zustand";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { stationLines, type ClubId, type Handed, type StationSettings } from "@overcue/shared-geometry/station";
import { readingWays, type ReadingWay } from "@overcue/shared-geometry/rolling-shutter";
import { metres, milliseconds, type Metres } from "@overcue/shared-geometry/units";
import { longestReading } from "./station-file.ts";
import type { StationSetUp } from "./station-set-up.ts";
import { lineNames } from "./station-words.ts";

const clubs: readonly ClubId[] = ["driver", "5-iron", "6-iron", "7-iron", "8-iron", "9-iron"];

type Length = "toeLine" | "heelLine" | "stickLength" | "clubLength" | "rodBeyondButt";

const lengths: readonly (readonly [Length, string, number, number])[] = [
  ["toeLine", "Ball line to toe line", 20, 150],
  ["heelLine", "Ball line to heel line", 30, 200],
  ["stickLength", "Stick", 30, 200],
  ["clubLength", "Club", 45, 122],
  ["rodBeyondButt", "Rod beyond the butt", 0, 120],
];

const readingWords: Readonly<Record<ReadingWay, string>> = {
  down: "from the top down",
  up: "from the bottom up",
  left: "from right to left",
  right: "from left to right",
};

/** What a tape measure and the golfer say of the station; everything has a usual value. Centimetres. */
export function StationForm({ setUp }: { readonly setUp: StationSetUp }) {
  const settings = useStore(setUp.store, (state) => state.settings);
  const ball = useStore(setUp.store, (state) => state.ball);
  const shutter = useStore(setUp.store, (state) => state.shutter);
  const hasPicture = useStore(setUp.store, (state) => state.picture !== null);
  return (
    <details className="station-form">
      <summary>
        {settings.club}, {settings.handed}-handed, toes {centimetres(settings.toeLine)}, heels{" "}
        {centimetres(settings.heelLine)} cm
      </summary>
      <div className="fields">
        <label>
          Club
          <select
            value={settings.club}
            onChange={(event) => {
              setUp.changeSettings(forClub(settings, event.target.value as ClubId));
            }}
          >
            {clubs.map((club) => (
              <option key={club}>{club}</option>
            ))}
          </select>
        </label>
        <label>
          Golfer
          <select
            value={settings.handed}
            onChange={(event) => {
              setUp.changeSettings({ handed: event.target.value as Handed });
            }}
          >
            <option value="right">right-handed</option>
            <option value="left">left-handed</option>
          </select>
        </label>
        {lengths.map(([name, words, least, most]) => (
          <label key={name}>
            {words}, cm
            <input
              type="number"
              inputMode="decimal"
              min={least}
              max={most}
              step={0.5}
              defaultValue={centimetres(settings[name])}
              key={`${settings.club}-${name}`}
              onChange={(event) => {
                const { valueAsNumber, validity } = event.target;
                if (validity.valid && Number.isFinite(valueAsNumber)) {
                  setUp.changeSettings({ [name]: metres(valueAsNumber / 100) });
                }
              }}
            />
          </label>
        ))}
        <fieldset>
          <legend>On the ground</legend>
          {stationLines.map((line) => (
            <label key={line}>
              <input
                type="checkbox"
                checked={settings.sticksPresent.includes(line)}
                onChange={(event) => {
                  const present = stationLines.filter((other) =>
                    other === line ? event.target.checked : settings.sticksPresent.includes(other),
                  );
                  setUp.changeSettings({ sticksPresent: present });
                }}
              />
              {lineNames[line]}
            </label>
          ))}
          <label>
            <input
              type="checkbox"
              checked={ball !== null}
              disabled={!hasPicture}
              onChange={(event) => {
                setUp.markBall(event.target.checked);
              }}
            />
            ball, marked in the picture
          </label>
        </fieldset>
        <label>
          Rolling shutter, ms
          <input
            type="number"
            inputMode="decimal"
            min={0}
            max={longestReading}
            step={0.5}
            placeholder="not known"
            defaultValue={shutter?.time ?? ""}
            onChange={(event) => {
              const { value, valueAsNumber, validity } = event.target;
              if (value === "" && validity.valid) setUp.changeShutter(null);
              else if (validity.valid && Number.isFinite(valueAsNumber))
                setUp.changeShutter({ time: milliseconds(valueAsNumber), towards: shutter?.towards ?? "right" });
            }}
          />
        </label>
        {shutter !== null && shutter.time > 0 && (
          <label>
            It reads the picture
            <select
              value={shutter.towards}
              onChange={(event) => {
                setUp.changeShutter({ ...shutter, towards: event.target.value as ReadingWay });
              }}
            >
              {readingWays.map((way) => (
                <option key={way} value={way}>
                  {readingWords[way]}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
    </details>
  );
}

const centimetres = (length: Metres): number => Math.round(length * 1000) / 10;

/** Another club brings its usual length and distances along; what else was said stays. */
function forClub(settings: StationSettings, club: ClubId): Partial<StationSettings> {
  const { clubLength, toeLine, heelLine } = defaultStation(club, settings.handed);
  return { club, clubLength, toeLine, heelLine };
}
