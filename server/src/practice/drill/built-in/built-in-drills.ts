import type { Drill } from "../drill-schema.ts";
import { flatBack } from "./flat-back.ts";
import { free } from "./free.ts";
import { steepBack } from "./steep-back.ts";
import { takeawayAlone } from "./takeaway-alone.ts";

/** The drills that every book has, in the order in which they are offered. They cannot be changed, only copied. */
export const builtInDrills: readonly Drill[] = [flatBack, steepBack, takeawayAlone, free];

export const firstDrill = flatBack.id;
export const freeDrill = free.id;
