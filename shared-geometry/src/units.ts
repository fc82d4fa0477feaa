/**
 * Branded numbers: an angle in degrees cannot be passed where radians are wanted, a pixel is never a metre.
 * The brand exists only for the type checker; at run time each is a plain number.
 */
declare const unit: unique symbol;
type Branded<Name extends string> = number & { readonly [unit]: Name };

export type Radians = Branded<"radians">;
export type Degrees = Branded<"degrees">;
export type RadiansPerSecond = Branded<"radians per second">;
export type Seconds = Branded<"seconds">;
export type Milliseconds = Branded<"milliseconds">;
export type Metres = Branded<"metres">;
export type Pixels = Branded<"pixels">;

export const radians = (value: number): Radians => value as Radians;
export const degrees = (value: number): Degrees => value as Degrees;
export const radiansPerSecond = (value: number): RadiansPerSecond => value as RadiansPerSecond;
export const seconds = (value: number): Seconds => value as Seconds;
export const milliseconds = (value: number): Milliseconds => value as Milliseconds;
export const metres = (value: number): Metres => value as Metres;
export const pixels = (value: number): Pixels => value as Pixels;

export const degreesFromRadians = (angle: Radians): Degrees => degrees((angle * 180) / Math.PI);
export const radiansFromDegrees = (angle: Degrees): Radians => radians((angle * Math.PI) / 180);
export const secondsFromMilliseconds = (time: Milliseconds): Seconds => seconds(time / 1000);
