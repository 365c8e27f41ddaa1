import { readerPaperOf } from "../../document/document.ts";
import type { PaperContext } from "../context.ts";
import { asGiven } from "../parts/part.ts";
import { about, compassPoint, say, sayDate, sayText } from "./say.ts";

/** Words about the well itself: name, state, shape. */
export const wellWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results } = context;
	const { identity, site } = well;
	const { trajectory } = results;
	const label = context.words.label;
	const latest = identity.revisions?.at(-1);
	const target = well.geology.formations.find((formation) => formation.target);
	const own = new Set(context.pad?.wells.map((each) => each.well.identity.name));
	const others = (site.pad?.other_wells ?? []).filter(({ name }) => !own.has(name));
	return {
		well: identity.name,
		operator: identity.operator,
		county: sayText(site.county),
		field: sayText(identity.field),
		permit: sayText(identity.permit),
		purpose: identity.purpose !== undefined && label(`purposes.${identity.purpose}`),
		state: label(`states.${identity.state}`),
		draft: identity.state === "draft",
		superseded: identity.state === "superseded",
		not_for_operations: identity.state !== "for operations",
		issued: sayDate(context, identity.issued),
		valid_until: sayDate(context, identity.valid_until),
		digest: context.digest,
		revision: sayText(latest?.id),
		revision_why: sayText(latest?.why),
		changed: (identity.revisions?.length ?? 0) > 1,
		summary: sayText(identity.summary),
		horizontal: trajectory.lateral_length !== undefined,
		lateral: about(context, trajectory.lateral_length),
		lateral_exact: say(context, trajectory.lateral_length),
		lateral_miles: about(context, trajectory.lateral_length, 2, context.units === "metric" ? "m" : undefined),
		lateral_direction: label(`compass.${compassPoint(trajectory.closure_azimuth.value)}`),
		depth_below_ground: about(context, trajectory.total_depth.below_ground),
		target: sayText(target?.name),
		pad_area: about(context, site.pad?.area),
		other_wells: others.map((other) => ({
			name: other.name,
			status: asGiven(context, other.status),
		})),
		has_contractors: (identity.contractors ?? []).length > 0,
		contractors: (identity.contractors ?? [])
			.filter(
				(contractor) =>
					contractor.papers === undefined || contractor.papers.includes(readerPaperOf(context.paper)),
			)
			.map((contractor) => ({ name: contractor.name, does: contractor.does })),
		has_other_wells: others.length > 0,
		datum: well.datum.name,
		datum_above_ground: about(context, well.datum.aboveGround, 3),
	};
};
