import { colourFromHex, scaleColour, type Colour } from "../colour.ts";
import { between, type Random } from "../random.ts";
import type { Far } from "./paint-far.ts";
import type { Ground, Mat } from "./paint-ground.ts";
import type { Wall, WallPatch } from "./paint-wall.ts";
import { chooseBackdrop } from "./photographs.ts";
import type { Bar, Place, PlaceName } from "./place.ts";

/** A place of the kind with everything about it that may differ from one range to another drawn by lot. */
export function makePlace(name: PlaceName, random: Random): Place {
  switch (name) {
    case "tee":
      return { behind: { kind: "far", far: farLine(random) }, ground: lawn(random), mat: null, bars: [] };
    case "range":
      return {
        behind: { kind: "far", far: farLine(random) },
        ground: lawn(random),
        mat: random() < 0.6 ? rangeMat(random) : null,
        bars: [...distancePosts(random), ...teeRope(random)],
      };
    case "busy":
      return {
        behind: { kind: "far", far: farLine(random) },
        ground: lawn(random),
        mat: rangeMat(random),
        bars: [
          ...distancePosts(random),
          ...teeRope(random),
          ...netPosts(random),
          ...fence(random),
          ...dividers(random),
          ...bagOfClubs(random),
        ],
      };
    case "room":
      return {
        behind: { kind: "wall", wall: roomWall(random) },
        ground: floor(random),
        mat: rangeMat(random),
        bars: [],
      };
    case "photograph":
      return {
        behind: { kind: "photograph", choice: chooseBackdrop(random) },
        ground: lawn(random),
        mat: null,
        bars: [],
      };
    case "bay":
      return {
        behind: { kind: "wall", wall: { atX: 4, colour: colourFromHex("#5d6066"), patches: [] } },
        ground: { ...floor(random), boards: 0 },
        mat: rangeMat(random),
        bars: [...netCords(2.6, 0.1), ...frame(2.6)],
      };
  }
}

function farLine(random: Random): Far {
  const overcast = random() < 0.5;
  return {
    skyTop: colourFromHex(overcast ? "#e3e7ec" : "#7fa9dc"),
    skyLow: colourFromHex(overcast ? "#fbfbfb" : "#d3e2f0"),
    clouds: between(random, 0.1, 0.6),
    trees: colourFromHex(random() < 0.5 ? "#1d2916" : "#2a3122"),
    treesLit: colourFromHex(random() < 0.5 ? "#5a7040" : "#6a7656"),
    treeHeight: between(random, 0.02, 0.12),
    roughness: between(random, 0.3, 0.9),
  };
}

function lawn(random: Random): Ground {
  const dry = between(random, 0, 1);
  const low: Colour = [0.055 + 0.06 * dry, 0.105 + 0.035 * dry, 0.022 + 0.012 * dry];
  const high: Colour = [0.21 + 0.14 * dry, 0.32 + 0.05 * dry, 0.055 + 0.05 * dry];
  return {
    low,
    high,
    scales: [
      { metres: 9, strength: 0.07 },
      { metres: 2.4, strength: 0.07 },
      { metres: 0.7, strength: 0.07 },
      { metres: 0.2, strength: between(random, 0.06, 0.12) },
      { metres: 0.06, strength: between(random, 0.08, 0.16) },
      { metres: 0.02, strength: between(random, 0.1, 0.2) },
      { metres: 0.007, strength: between(random, 0.12, 0.24) },
    ],
    stripes: { metres: random() < 0.5 ? 3.2 : 0, strength: 0.07 },
    boards: 0,
    farEnd: between(random, 120, 260),
    lampFall: 1,
  };
}

function rangeMat(random: Random): Mat {
  return {
    fromX: -0.75,
    toX: 0.75,
    fromY: -0.35,
    toY: 1.15,
    colour: scaleColour(colourFromHex(random() < 0.7 ? "#3f7a45" : "#5b6e52"), between(random, 0.7, 1.1)),
  };
}

function floor(random: Random): Ground {
  const wood = random() < 0.5;
  return {
    low: colourFromHex(wood ? "#7a5636" : "#7d7a76"),
    high: colourFromHex(wood ? "#b98d5f" : "#a09c96"),
    scales: [
      { metres: 0.9, strength: 0.15 },
      { metres: 0.11, strength: 0.12 },
      { metres: 0.02, strength: 0.12 },
    ],
    stripes: { metres: 0, strength: 0 },
    boards: wood ? 0.14 : 0,
    farEnd: 1e6,
    lampFall: between(random, 0.6, 0.9),
  };
}

function roomWall(random: Random): Wall {
  const at = between(random, 2.2, 3.4);
  const patches: WallPatch[] = [
    { fromY: -9, toY: 9, fromZ: 0, toZ: 0.09, colour: colourFromHex("#efefec"), shines: false },
    { fromY: -1.6, toY: -0.7, fromZ: 0, toZ: 2.05, colour: colourFromHex("#f4f1ea"), shines: false },
    { fromY: -1.52, toY: -0.78, fromZ: 0, toZ: 1.97, colour: colourFromHex("#8f7355"), shines: false },
    { fromY: 1.1, toY: 2.2, fromZ: 1.0, toZ: 2.1, colour: colourFromHex("#ffffff"), shines: false },
  ];
  if (random() < 0.5)
    patches.push({ fromY: 1.16, toY: 2.14, fromZ: 1.06, toZ: 2.04, colour: [1.6, 1.7, 1.8], shines: true });
  const frames = 2 + Math.floor(random() * 3);
  for (let index = 0; index < frames; index++) {
    const y = between(random, -0.4, 1);
    const z = between(random, 1.1, 1.9);
    const wide = between(random, 0.15, 0.35);
    const tall = between(random, 0.15, 0.35);
    patches.push(
      {
        fromY: y - 0.02,
        toY: y + wide + 0.02,
        fromZ: z - 0.02,
        toZ: z + tall + 0.02,
        colour: colourFromHex("#2b2622"),
        shines: false,
      },
      { fromY: y, toY: y + wide, fromZ: z, toZ: z + tall, colour: [random(), random(), random()], shines: false },
    );
  }
  return { atX: at, colour: colourFromHex(random() < 0.5 ? "#d9d4c8" : "#b9c2c9"), patches };
}

const post = (x: number, y: number, height: number, radius: number, hex: string): Bar => ({
  from: { x, y, z: 0 },
  to: { x, y, z: height },
  radius,
  colour: colourFromHex(hex),
  cover: 1,
});

function distancePosts(random: Random): readonly Bar[] {
  return Array.from({ length: 5 }, (_, index) =>
    post(40 + 30 * index + 10 * random(), between(random, -25, 25), 1.6, 0.12, random() < 0.5 ? "#f2f2f2" : "#c0392b"),
  );
}

/** A rope between short pegs along the tee line, in front of the golfer. */
function teeRope(random: Random): readonly Bar[] {
  const x = between(random, 1.2, 2.2);
  const bars: Bar[] = [];
  for (let y = -6; y < 6; y += 1.5) {
    bars.push(post(x, y, 0.3, 0.012, "#e9e4d4"), {
      from: { x, y, z: 0.27 },
      to: { x, y: y + 1.5, z: 0.27 },
      radius: 0.006,
      colour: colourFromHex("#d8c98f"),
      cover: 1,
    });
  }
  return bars;
}

function netPosts(random: Random): readonly Bar[] {
  const bars: Bar[] = [];
  for (let index = 0; index < 5; index++)
    bars.push(post(between(random, 25, 60), between(random, -14, 14), 12, 0.11, "#596066"));
  return bars;
}

function fence(random: Random): readonly Bar[] {
  const x = between(random, 12, 20);
  const bars: Bar[] = [];
  for (let y = -15; y <= 15; y += 2.5) bars.push(post(x, y, 1.2, 0.045, "#8a7a63"));
  for (const z of [0.4, 0.75, 1.1]) {
    bars.push({
      from: { x, y: -15, z },
      to: { x, y: 15, z },
      radius: 0.02,
      colour: colourFromHex("#9a8a72"),
      cover: 1,
    });
  }
  return bars;
}

/** Low partitions between bays, seen lengthways. */
function dividers(random: Random): readonly Bar[] {
  const bars: Bar[] = [];
  for (const y of [-1.6, 2.2]) {
    bars.push(
      {
        from: { x: -1.5, y, z: 0.45 },
        to: { x: 1.6, y, z: 0.45 },
        radius: 0.02,
        colour: colourFromHex("#d7d7d2"),
        cover: 1,
      },
      post(-1.5, y, 0.45, 0.02, "#d7d7d2"),
      post(1.6, y, 0.45, 0.02, random() < 0.5 ? "#d7d7d2" : "#bb3b2f"),
    );
  }
  return bars;
}

/** A stand of clubs some steps away: shafts leaning at all angles. */
function bagOfClubs(random: Random): readonly Bar[] {
  const x = between(random, 0.8, 1.6);
  const y = between(random, 1.7, 2.4) * (random() < 0.5 ? 1 : -0.8);
  return Array.from({ length: 6 }, () => ({
    from: { x: x + between(random, -0.04, 0.04), y: y + between(random, -0.04, 0.04), z: 0.6 },
    to: { x: x + between(random, -0.25, 0.25), y: y + between(random, -0.3, 0.3), z: 1.15 },
    radius: 0.006,
    colour: colourFromHex(random() < 0.5 ? "#c9ccd0" : "#202226"),
    cover: 1,
  }));
}

function netCords(x: number, gap: number): readonly Bar[] {
  const cord = { radius: 0.0015, colour: colourFromHex("#e4e4e0"), cover: 0.8 };
  const bars: Bar[] = [];
  for (let y = -2; y <= 2.8; y += gap) bars.push({ from: { x, y, z: 0 }, to: { x, y, z: 2.6 }, ...cord });
  for (let z = 0; z <= 2.6; z += gap) bars.push({ from: { x, y: -2, z }, to: { x, y: 2.8, z }, ...cord });
  return bars;
}

function frame(x: number): readonly Bar[] {
  const bar = { radius: 0.025, colour: colourFromHex("#3a3d42"), cover: 1 };
  return [
    { from: { x, y: -1.9, z: 0 }, to: { x, y: -1.9, z: 2.6 }, ...bar },
    { from: { x, y: 2.7, z: 0 }, to: { x, y: 2.7, z: 2.6 }, ...bar },
    { from: { x, y: -1.9, z: 2.6 }, to: { x, y: 2.7, z: 2.6 }, ...bar },
  ];
}
