import type { Known } from "../cite/known.ts";
import type { SourceRef } from "../cite/source.ts";
import type {
	Agency,
	Community,
	DrillString,
	Identity,
	Logistics,
	Neighbor,
	OffsetWell,
	PermitCondition,
	Safety,
	Schedule,
	Site,
	WellBarriers,
	WellControl,
	Wellhead,
} from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import type { Said } from "../messages/message.ts";
import type { Datum } from "./depths.ts";
import type { DesignBasis } from "./design-basis.ts";
import type { EndOfLife } from "./end-of-life.ts";
import type { Geology } from "./geology.ts";
import type { Stimulation } from "./stimulation.ts";
import type { CasingString, Hole } from "./strings.ts";
import type { OffsetPaths, Trajectory } from "./trajectory.ts";

export type * from "./cement.ts";
export type * from "./depths.ts";
export type * from "./design-basis.ts";
export * from "./geology.ts";
export type * from "./stimulation.ts";
export type * from "./strings.ts";
export type * from "./trajectory.ts";

/**
 * What was understood of a definition: references joined, catalogue rows found, datums reduced to one, defaults filled
 * in and each of them recorded. Every quantity knows its origin. Lists are ordered from the outermost string inward
 * and from the surface down.
 */
export interface Well {
	readonly identity: Identity;
	readonly site: Site;
	readonly datum: Datum;
	readonly geology: Geology;
	readonly trajectory: Trajectory;
	readonly holes: readonly Hole[];
	readonly strings: readonly CasingString[];
	readonly designBasis: DesignBasis;
	readonly stimulation?: Stimulation;
	readonly drillString?: DrillString;
	readonly wellControl?: WellControl;
	readonly wellhead?: Wellhead;
	/** Elements and tests of the barriers that nothing else states. */
	readonly barriers: WellBarriers;
	readonly neighbors: readonly Neighbor[];
	readonly offsetWells: readonly OffsetWell[];
	readonly offsetPaths: OffsetPaths;
	readonly conditions: readonly PermitCondition[];
	readonly schedule: Schedule;
	readonly logistics?: Logistics;
	readonly endOfLife?: EndOfLife;
	readonly agency?: Agency;
	readonly community?: Community;
	readonly safety?: Safety;
	readonly assumptions: readonly Assumption[];
}

/** Something the definition left out and the tool filled in; every paper that uses it can say so. */
export interface Assumption {
	readonly id: string;
	/** Where the engineer may state it instead. */
	readonly at: Path;
	/** One sentence: what was assumed. */
	readonly what: Said;
	/** Why this value. */
	readonly why: Said;
	readonly value?: Known;
	readonly source?: SourceRef;
}
