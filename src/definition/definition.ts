import * as z from "zod";
import { agency } from "./agency.ts";
import { EVERY, SETTING } from "./audience.ts";
import { casing } from "./casing.ts";
import { community } from "./community.ts";
import { designBasis } from "./design-basis.ts";
import { drillString } from "./drill-string.ts";
import { endOfLife } from "./end-of-life.ts";
import { field, group, optional } from "./field.ts";
import { geology } from "./geology.ts";
import { holes } from "./holes.ts";
import { identity } from "./identity.ts";
import { logistics } from "./logistics.ts";
import { safety } from "./safety.ts";
import { schedule } from "./schedule.ts";
import { site } from "./site.ts";
import { stimulation } from "./stimulation.ts";
import { trajectory } from "./trajectory.ts";
import { wellBarriers } from "./well-barriers.ts";
import { wellControl } from "./well-control.ts";
import { wellhead } from "./wellhead.ts";

/** Everything an engineer may write about a well, one block for each topic. */
export const definitionSchema = group("Well definition", "One well, from which every paper is made.", EVERY, {
	definition: field(z.literal(1), {
		title: "Version of this format",
		why: "Tells the tool how to read the rest.",
		papers: SETTING,
		expected: "`1`",
		example: "1",
	}),
	well: identity,
	site,
	geology,
	trajectory,
	holes,
	drill_string: optional(drillString),
	well_control: optional(wellControl),
	design_basis: optional(designBasis),
	casing,
	wellhead: optional(wellhead),
	well_barriers: optional(wellBarriers),
	stimulation: optional(stimulation),
	schedule: optional(schedule),
	logistics: optional(logistics),
	agency: optional(agency),
	community: optional(community),
	safety: optional(safety),
	end_of_life: optional(endOfLife),
});

/** A definition as read: quantities are `Known`, everything else as written. Keys are those of the file. */
export type Definition = z.output<typeof definitionSchema>;

export type { Agency } from "./agency.ts";
export type {
	CasingDefinition,
	PipeDefinition,
	PressureTestDefinition,
	ShoeTestDefinition,
} from "./casing.ts";
export type { CementDefinition } from "./cement.ts";
export type { Community } from "./community.ts";
export type { AtSurface, Depth } from "./depth-field.ts";
export type { DesignBasisDefinition } from "./design-basis.ts";
export type { DrillString } from "./drill-string.ts";
export type { GeologyDefinition } from "./geology.ts";
export type { HoleDefinition } from "./holes.ts";
export type { Identity } from "./identity.ts";
export type { Logistics } from "./logistics.ts";
export type { Neighbor } from "./neighbors.ts";
export type { OffsetWell } from "./offset-wells.ts";
export type { Safety } from "./safety.ts";
export type { Schedule } from "./schedule.ts";
export type { PermitCondition, Site } from "./site.ts";
export type { FlushTo } from "./stages.ts";
export type { StimulationDefinition } from "./stimulation.ts";
export type { TrajectoryDefinition } from "./trajectory.ts";
export type { WellBarriers } from "./well-barriers.ts";
export type { WellControl } from "./well-control.ts";
export type { Wellhead } from "./wellhead.ts";
