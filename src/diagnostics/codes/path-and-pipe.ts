import type { CodeEntry } from "../codes.ts";

/** Faults of the path and the pipe that only the calculation can see. */
export const PATH_AND_PIPE_CODES = {
	"calc/mixed-norths": {
		severity: "error",
		title: "Azimuths from two norths cannot be laid side by side",
		explain:
			"The same azimuth from grid, true and magnetic north is three directions, and over a long lateral the difference is " +
			"hundreds of feet. A survey counted from another north than the well's is turned to it, and that needs the grid " +
			"convergence or the magnetic declination, or both. Nothing is calculated until they are stated.",
	},
	"calc/survey-start": {
		severity: "warning",
		title: "The survey does not tell how the hole came to its first station",
		explain:
			"A path is carried from the depth datum down. Where the first station stands below it in a hole already inclined, the " +
			"way there is taken as one arc from vertical, which no hole need have followed. Give the stations from the surface.",
	},
} as const satisfies Record<string, CodeEntry>;
