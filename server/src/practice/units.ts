/**
 * Places and distances on the ground are `Metres` (from shared-geometry); what is a ratio of two of them is a `Share`.
 * The brands keep the two apart for the type checker: a share is never added to a place.
 */
declare const unit: unique symbol;

/** A ratio of two lengths: 1 is the whole of the wanted change, 0.8 is 80 % of it. */
export type Share = number & { readonly [unit]: "share" };

export const share = (value: number): Share => value as Share;

/** Milliseconds on the relay's clock, since the epoch. */
export type RelayTime = number;
