import type { CasingString } from "./well.ts";

/** An outermost string without a shoe track or a displacement is grouted from the surface: it has no plug to land. */
export const isGrouted = ({ within, shoeTrack, cement }: CasingString): boolean =>
	within === undefined &&
	shoeTrack === undefined &&
	cement !== undefined &&
	cement.displacement === undefined;
