import type { Known, KnownTable } from "../../../cite/known.ts";
import { constant } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { message } from "../../../messages/message.ts";
import { holeMark } from "../../depths/marks.ts";
import { maybe, siblingOf } from "../../gaps.ts";
import type { CasingResults, HookLoadResults, LoadCaseResults, SituationResults } from "../../results.ts";
import { effectiveForceAt, hangingForce, heldForce } from "./axial-force.ts";
import { freeStretches } from "./free-stretches.ts";
import { hookLoadsAtBottom } from "./hook-loads.ts";
import { leastFactor } from "./least-factor.ts";
import { NO_LOAD } from "./line.ts";
import { loadCase } from "./load-case.ts";
import {
	bentTensionLine,
	burstLine,
	collapseLine,
	combinedCollapseLine,
	overpullLine,
	plugTestLine,
	shockLine,
	tensionLine,
	triaxialLine,
} from "./load-lines.ts";
import { phaseOf, placeInLife } from "./phases.ts";
import { uniformPressure } from "./profiles.ts";
import { slidingOf } from "./running.ts";
import { type Situation, type Situations, situationsOf } from "./situations.ts";
import {
	compressionDepth,
	compressionOverHelical,
	compressionThere,
	helicalThere,
	slackOffAtReach,
} from "./slack-off.ts";
import { type Frame, frameOf, type StringContext } from "./string-frame.ts";
import { collapseRatingAtLeast, triaxialStressAtLeast } from "./why-least.ts";

const AIR = constant("pressure", 0, "air, without weight", cite("definition"));

interface StringLoads {
	readonly loads: readonly LoadCaseResults[];
	readonly situations: readonly SituationResults[];
	readonly hook_loads?: NonNullable<CasingResults["hook_loads"]>;
	readonly hook_load?: HookLoadResults;
	readonly slack_off?: NonNullable<CasingResults["slack_off"]>;
	readonly slack_off_compression?: NonNullable<CasingResults["slack_off_compression"]>;
}

/**
 * Every load case of a string that its inputs allow, each as a line over depth beside the rating, with the least factor,
 * in the order that the string meets them.
 *
 * Weights by the vertical; drag while running; once the cement has set, held all along it and at the hanger, free to share
 * its stretch between the two; bending by the path's dogleg; buckling told apart, and never counted in.
 */
export const stringLoads = (context: StringContext): StringLoads => {
	const { string, gaps, well } = context;
	const mud = string.hole.fluid?.density;
	if (mud === undefined) {
		askForMud(context);
		return { loads: [], situations: [] };
	}
	const frame = frameOf(context);
	const situations = situationsOf(context, mud);
	const forces = forcesOf(context, frame, situations);
	if (!frame.jointsRated)
		gaps.missing(`casing.${string.id}.loads.tension`, message("calc/strength-joint-is-not-known"), [
			["casing", well.strings.indexOf(string), "pipe"],
		]);
	const loads = [
		...runningCases(context, frame, situations, forces),
		...situations.all.flatMap((situation) => pressureCases(context, frame, situation, situations, forces)),
	];
	const { sliding } = forces;
	return {
		loads: loads.toSorted((a, b) => placeInLife(a.situation, a.phase) - placeInLife(b.situation, b.phase)),
		situations: situations.all
			.map((situation) => situationResults(context, frame, situation, situations, forces))
			.toSorted((a, b) => placeInLife(a.id, a.phase) - placeInLife(b.id, b.phase)),
		...maybe("hook_loads", sliding?.hookLoads),
		...(sliding === undefined ? {} : hookOf(context, sliding)),
		...maybe("slack_off_compression", sliding && compressionOf(context, sliding.compression)),
	};
};

/** How deep the string slides, and what the hook carries there and at bottom. */
const hookOf = (
	{ path, well, string }: StringContext,
	{ least, greatest, reach, hookLoads }: NonNullable<Forces["sliding"]>,
): Required<Pick<StringLoads, "hook_load" | "slack_off">> => {
	const [easy, hard] = [slackOffAtReach.of({ line: least }), slackOffAtReach.of({ line: greatest })];
	const lands = ({ value }: Known) => value >= string.shoe.value;
	return {
		hook_load: {
			...hookLoadsAtBottom(hookLoads),
			...maybe("run_in_least_friction", lands(reach.least) ? easy : undefined),
			...maybe("run_in_greatest_friction", lands(reach.greatest) ? hard : undefined),
		},
		slack_off: {
			least_friction: { line: least, reach: holeMark(path, reach.least, well.datum), hook_load: easy },
			greatest_friction: {
				line: greatest,
				reach: holeMark(path, reach.greatest, well.datum),
				hook_load: hard,
			},
		},
	};
};

/** Nothing where the string is pulled taut all the way, or the limit lies outside its formula. */
const compressionOf = (
	{ path, well }: StringContext,
	line: NonNullable<Forces["sliding"]>["compression"],
): StringLoads["slack_off_compression"] => {
	if (!line.rows.some(({ compression }) => (compression ?? 0) > NO_LOAD)) return undefined;
	return {
		line,
		over_helical: compressionOverHelical.of({ line }),
		at: holeMark(path, compressionDepth.of({ line }), well.datum),
		compression: compressionThere.of({ line }),
		helical: helicalThere.of({ line }),
	};
};

const askForMud = ({ string, gaps }: StringContext): void => {
	const { fluid, id } = string.hole;
	if (fluid?.kind === "air")
		gaps.missing(`casing.${string.id}.loads`, message("calc/hole-is-drilled-with-air-no", { id }), []);
	else
		gaps.missing(`casing.${string.id}.loads`, message("calc/no-mud-density-is-given-for", { id }), [
			siblingOf(string.hole.diameter, "fluid", ["holes"]),
		]);
};

interface Forces {
	/** Hung free in mud. */
	readonly hung: KnownTable;
	/** When the cement has set. */
	readonly set: KnownTable;
	readonly sliding: ReturnType<typeof slidingOf>;
}

const forcesOf = (context: StringContext, { sections }: Frame, { mud, set }: Situations): Forces => {
	const { path } = context;
	return {
		hung: hangingForce.of({ path, sections, inside: mud, outside: mud }),
		set: hangingForce.of({ path, sections, ...set }),
		sliding: slidingOf(context, sections, mud),
	};
};

/** What happens on the hook. */
const runningCases = (
	context: StringContext,
	{ sections, temperature, derating, jointsRated }: Frame,
	{ mud }: Situations,
	{ hung, sliding }: Forces,
): readonly LoadCaseResults[] => {
	const { well, path, string } = context;
	const shared = { path, sections, temperature, r: derating };
	// A liner is let down on another string, whose drag is not worked here.
	const force = sliding?.pulled ?? hung;
	const triaxial = triaxialCase(context, "running", { ...shared, inside: mud, outside: mud, force });
	if (!jointsRated) return triaxial;
	const air = uniformPressure.of({ p: AIR });
	const { designFactors: factors } = string;
	const tension = (
		situation: "running" | "bending" | "shock" | "overpull",
		line: KnownTable,
		required: Known<"ratio">,
	) => loadCase(context, { kind: "tension", situation, line: line as LoadCaseResults["line"], required });
	const bent = path.rows.some(
		({ md, dogleg }, i) =>
			(dogleg ?? 0) > 0 &&
			(md ?? 0) > string.top.value &&
			(path.rows[i - 1]?.["md"] ?? 0) < string.shoe.value,
	);
	return [
		...tension("running", tensionLine.of({ ...shared, force }), factors.tension),
		...triaxial,
		...(bent ? tension("bending", bentTensionLine.of({ ...shared, force }), factors.bending) : []),
		...tension(
			"shock",
			shockLine.of({ ...shared, force: hung, v: well.designBasis.runningSpeed }),
			factors.tension,
		),
		...tension(
			"overpull",
			overpullLine.of({
				...shared,
				dry: hangingForce.of({ path, sections, inside: air, outside: air }),
				overpull: well.designBasis.overpull,
			}),
			factors.overpull,
		),
	];
};

/** Temperature that the steel is weakened by; cooled steel counts as no stronger than at the rock's. */
const steelIn = ({ temperature, producing }: Frame, { hot }: Situation): KnownTable =>
	hot === true ? (producing ?? temperature) : temperature;

const forceIn = (
	context: StringContext,
	frame: Frame,
	situation: Situation,
	set: Situations["set"],
	forces: Forces,
): KnownTable => {
	const { path } = context;
	const { sections, temperature } = frame;
	const { inside, outside } = situation;
	return situation.axial === "open"
		? hangingForce.of({ path, sections, inside, outside })
		: heldForce.of({
				path,
				sections,
				landed: forces.set,
				inside_before: set.inside,
				outside_before: set.outside,
				inside,
				outside,
				temperature_before: temperature,
				temperature: situation.cooled === true ? frame.cooled : steelIn(frame, situation),
				...freeStretches(context),
			});
};

/** What presses from one side or the other. */
const pressureCases = (
	context: StringContext,
	frame: Frame,
	situation: Situation,
	{ set }: Situations,
	forces: Forces,
): readonly LoadCaseResults[] => {
	const { path, string } = context;
	const { sections, derating: r, jointsRated } = frame;
	const { inside, outside, name, kind } = situation;
	const temperature = steelIn(frame, situation);
	const shared = { path, sections, temperature, r };
	const force = forceIn(context, frame, situation, set, forces);
	const test = name === "pressure-test" ? string.pressureTest?.pressure : undefined;
	const tension = jointsRated
		? loadCase(context, {
				kind: "tension",
				situation: name,
				line:
					test === undefined
						? tensionLine.of({ ...shared, force })
						: plugTestLine.of({ ...shared, force: forces.hung, P: test }),
			})
		: [];
	const triaxial = triaxialCase(context, name, { ...shared, inside, outside, force });
	if (kind === "burst")
		return [...burstCase(context, { ...frame, temperature }, situation), ...tension, ...triaxial];
	// Tension lowers collapse, so the string is taken as tight as it was hung, before anything warmed it.
	const tight = { ...shared, force: situation.axial === "open" ? force : forces.hung };
	const line = collapseLine.of({ ...tight, inside, outside });
	return [
		...loadCase(context, {
			kind: "collapse",
			situation: name,
			line,
			...(line.rows.length === 0 ? {} : { rating: collapseRatingAtLeast.of({ line, ...tight }) }),
		}).map((each) => ({
			...each,
			...maybe("combined_factor", combined(context, name, { ...tight, inside, outside })),
		})),
		...triaxial,
	];
};

/** The least factor of collapse by the method from 2015 on; where nothing collapses the string there is none. */
const combined = (
	{ string, well, gaps }: StringContext,
	situation: Situation["name"],
	given: Parameters<typeof combinedCollapseLine.of>[0],
): Known<"ratio"> | undefined => {
	const line = combinedCollapseLine.of(given);
	if (line.rows.length === 0)
		return gaps.missing(
			`casing.${string.id}.loads.collapse-${situation}.combined_factor`,
			message("calc/rating-under-this-load-lies-outside"),
			[["casing", well.strings.indexOf(string), "pipe"]],
		);
	const factor = leastFactor.of({ line });
	return Number.isFinite(factor.value) ? factor : undefined;
};

const burstCase = (
	context: StringContext,
	{ sections, temperature, derating: r, couplingsRated }: Frame,
	{ name, inside, outside }: Situation,
): readonly LoadCaseResults[] => {
	const { path, string, well, gaps } = context;
	if (couplingsRated)
		return loadCase(context, {
			kind: "burst",
			situation: name,
			line: burstLine.of({ path, sections, temperature, r, inside, outside }),
		});
	gaps.missing(
		`casing.${string.id}.loads.burst-${name}`,
		message("calc/internal-pressure-rating-coupling-is-not"),
		[["casing", well.strings.indexOf(string), "pipe"]],
	);
	return [];
};

const triaxialCase = (
	context: StringContext,
	situation: LoadCaseResults["situation"],
	given: Parameters<typeof triaxialLine.of>[0],
): readonly LoadCaseResults[] => {
	const line = triaxialLine.of(given);
	const { path, sections, inside, outside, force } = given;
	return loadCase(context, {
		kind: "triaxial",
		situation,
		line,
		...(line.rows.length === 0
			? {}
			: { load: triaxialStressAtLeast.of({ line, path, sections, inside, outside, force }) }),
	});
};

const situationResults = (
	context: StringContext,
	frame: Frame,
	situation: Situation,
	{ set }: Situations,
	forces: Forces,
): SituationResults => {
	const { well, string, path } = context;
	const { inside, outside } = situation;
	// The free pipe above the cement buckles from its foot, where the effective force is least.
	const [MD] = freeStretches(context).free_bottom;
	const { sections } = frame;
	return {
		id: situation.name,
		phase: phaseOf(situation.name, well, string),
		kind: situation.kind,
		...maybe("surface_pressure", situation.surfacePressure),
		inside: inside as SituationResults["inside"],
		outside: outside as SituationResults["outside"],
		...(situation.hot === true && MD !== undefined
			? {
					effective_force: effectiveForceAt.of({
						path,
						sections,
						inside,
						outside,
						force: forceIn(context, frame, situation, set, forces),
						MD,
					}),
					effective_force_at: holeMark(path, MD, well.datum),
				}
			: {}),
	};
};
