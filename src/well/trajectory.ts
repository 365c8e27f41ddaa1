import type { ErrorModel } from "../catalog/error-model-table.ts";
import type { Known, KnownTable } from "../cite/known.ts";

export interface Trajectory {
	readonly plan?: TrajectoryPlan;
	readonly survey?: Survey;
	readonly verticalSectionAzimuth?: Known<"angle">;
	/** From the wellhead; the wellhead itself where absent. */
	readonly verticalSectionOrigin?: { readonly north: Known<"offset">; readonly east: Known<"offset"> };
	/** What the survey tool errs by, and the magnetic field that it is steered by. */
	readonly errorModel?: {
		readonly name: string;
		readonly table: ErrorModel["table"];
		readonly field: Known<"magnetic-field">;
		readonly dip: Known<"angle">;
	};
	/** Stated by the engineer. */
	readonly uncertainty?: {
		readonly radius: Known<"distance">;
		readonly confidence?: Known<"share">;
		readonly source: string;
	};
}

/** Where the other wells go, as far as it is given. */
export interface OffsetPaths {
	readonly paths: readonly OffsetPath[];
	/** Of radii stated without a confidence. */
	readonly confidence?: Known<"share">;
}

/** The hole of an offset well; depths from its own datum. */
export type OffsetPath = { readonly id: string } & (
	| { readonly kind: "vertical"; readonly depth: Known<"true-vertical-depth"> }
	| {
			readonly kind: "bottom hole";
			readonly latitude: Known<"angle">;
			readonly longitude: Known<"angle">;
			readonly depth: Known<"true-vertical-depth">;
	  }
	| {
			readonly kind: "surveyed";
			readonly stations: KnownTable<"md" | "inclination" | "azimuth">;
			readonly north?: "grid" | "true" | "magnetic";
			/** Of a well of the same pad: what its survey tool errs by, from true north. */
			readonly covariance?: KnownTable;
	  }
);

/** Shapes of plan; each is an exact list of arcs and straights. */
export type TrajectoryPlan =
	| { readonly kind: "vertical"; readonly to: Known<"measured-depth"> }
	| {
			readonly kind: "build-and-land";
			readonly kickoff: Known<"measured-depth">;
			readonly build: Known<"dogleg">;
			readonly azimuth: Known<"angle">;
			readonly landingInclination: Known<"angle">;
			readonly lateral: Known<"length">;
	  }
	| {
			readonly kind: "build-and-hold";
			readonly kickoff: Known<"measured-depth">;
			readonly build: Known<"dogleg">;
			readonly azimuth: Known<"angle">;
			readonly target: { readonly tvd: Known<"true-vertical-depth">; readonly departure: Known<"length"> };
	  }
	| { readonly kind: "segments"; readonly segments: readonly PathSegment[] };

/** One arc (or straight) from the end of the segment before; inclination and azimuth are those at its own end. */
interface PathSegment {
	readonly length: Known<"length">;
	readonly inclination: Known<"angle">;
	readonly azimuth: Known<"angle">;
}

/** Stations as surveyed; the first is the tie-in. */
export interface Survey {
	readonly stations: KnownTable<"md" | "inclination" | "azimuth">;
	/** The north its azimuths are counted from, where stated; else that of the site. */
	readonly north?: "grid" | "true" | "magnetic";
	readonly company?: string;
	readonly tool?: string;
	readonly dates?: readonly [string, string];
}
