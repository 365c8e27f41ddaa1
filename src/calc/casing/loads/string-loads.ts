import { constant, type Known, type KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import type { CasingString, Well } from "../../../well/well.ts";
import { holeMark } from "../../depths/marks.ts";
import { type Gaps, maybe, siblingOf } from "../../gaps.ts";
import type { CasingResults, LoadCaseResults, LoadSituation } from "../../results.ts";
import { tvdAt } from "../../trajectory/at-depth.ts";
import { pathEnd } from "../../trajectory/path-summary.ts";
import { leastInternalYield } from "../internal-yield.ts";
import { leastTension } from "../joint-strength.ts";
import { hangingForce, heldForce } from "./axial-force.ts";
import { leastFactor, leastFactorDepth } from "./least-factor.ts";
import {
	burstLine,
	collapseLine,
	overpullLine,
	plugTestLine,
	tensionLine,
	triaxialLine,
} from "./load-lines.ts";
import { loadSections } from "./load-sections.ts";
import { temperatureProfile, uniformTemperature } from "./profiles.ts";
import { type Situation, situationsOf } from "./situations.ts";

/** Asked of the string being pulled, whatever the well's other factors. */
const OVERPULL_FACTOR = constant("ratio", 1.1, "design factor for overpull", cite("devereux", "p. 62"));
/** Where no temperature is known, ratings are those at room temperature. */
const ROOM = constant(
	"temperature",
	70,
	"temperature not given: no derating, no cooling",
	cite("definition"),
);

export interface StringContext {
	readonly well: Well;
	readonly path: KnownTable;
	readonly gaps: Gaps;
	readonly string: CasingString;
	/** The string's other results. */
	readonly results: Omit<CasingResults, "loads">;
}

/**
 * Every load case of a string that its inputs allow, each as a line over depth beside the rating, with the least factor.
 *
 * Friction-free; both ends held once landed; bending by the path's dogleg; buckling not considered.
 */
export const stringLoads = (context: StringContext): readonly LoadCaseResults[] => {
	const { string, gaps } = context;
	const mud = string.hole.fluid?.density;
	if (mud === undefined) {
		const { fluid, id } = string.hole;
		if (fluid?.kind === "air")
			gaps.missing(
				`casing.${string.id}.loads`,
				`The ${id} hole is drilled with air: no mud loads the string.`,
				[],
			);
		else
			gaps.missing(`casing.${string.id}.loads`, `No mud density is given for the ${id} hole.`, [
				siblingOf(string.hole.diameter, "fluid", ["holes"]),
			]);
		return [];
	}
	const frame = frameOf(context);
	const situations = situationsOf(context, mud);
	const landed = hangingForce.of({
		path: context.path,
		sections: frame.sections,
		inside: situations.mud,
		outside: situations.mud,
	});
	return [
		...tensionCases(context, frame, landed),
		...situations.all.flatMap((situation) =>
			pressureCases(context, frame, situation, situations.mud, landed),
		),
	];
};

/** What every line of a string shares. */
interface Frame {
	readonly sections: KnownTable;
	readonly temperature: KnownTable;
	readonly cooled: KnownTable;
	readonly jointsRated: boolean;
	readonly couplingsRated: boolean;
}

const frameOf = ({ well, path, string, results }: StringContext): Frame => {
	const { surfaceTemperature: T_s, temperatureGradient: G } = well.geology;
	const { sections } = results;
	const known = T_s !== undefined && G !== undefined;
	const unrated = string.sections.filter(
		(s) => s.connection !== "plain end" && s.stated?.internalYield === undefined,
	);
	return {
		sections: loadSections.of({
			top: string.sections.map((s) => s.top),
			bottom: string.sections.map((s) => s.bottom),
			D: string.sections.map((s) => s.outsideDiameter),
			t: string.sections.map((s) => s.wall),
			Y_p: string.sections.map((s) => s.minimumYield),
			w: string.sections.map((s) => s.nominalWeight),
			P_i: sections.map((s) =>
				leastInternalYield.of({ ratings: [s.internal_yield, ...present(s.coupling_internal_yield)] }),
			),
			P_c: sections.map((s) => s.collapse),
			F_t: sections.map((s) => leastTension.of({ ratings: [s.body_yield, ...present(s.joint_strength)] })),
			wear: well.designBasis.wear,
		}),
		temperature: known
			? temperatureProfile.of({
					T_s,
					G,
					h: well.datum.aboveGround,
					D: tvdAt(path, pathEnd.of({ path })),
				})
			: uniformTemperature.of({ T: ROOM }),
		cooled: uniformTemperature.of({ T: known ? T_s : ROOM }),
		jointsRated: sections.every((s) => s.joint_strength !== undefined),
		couplingsRated: unrated.every((s) => sections[s.number - 1]?.coupling_internal_yield !== undefined),
	};
};

const present = <T>(value: T | undefined): readonly T[] => (value === undefined ? [] : [value]);

const tensionCases = (
	context: StringContext,
	frame: Frame,
	landed: KnownTable,
): readonly LoadCaseResults[] => {
	const { well, path, string, gaps } = context;
	if (!frame.jointsRated) {
		gaps.missing(`casing.${string.id}.loads.tension`, "The strength of a joint is not known.", [
			["casing", well.strings.indexOf(string), "pipe"],
		]);
		return [];
	}
	const { sections, temperature } = frame;
	const shared = { path, sections, temperature, r: well.designBasis.temperatureDerating };
	return [
		...caseOf(context, "tension", "running", tensionLine.of({ ...shared, force: landed })),
		...caseOf(
			context,
			"tension",
			"overpull",
			overpullLine.of({ ...shared, overpull: well.designBasis.overpull }),
			OVERPULL_FACTOR,
		),
		...(string.pressureTest === undefined
			? []
			: caseOf(
					context,
					"tension",
					"pressure-test",
					plugTestLine.of({ ...shared, force: landed, P: string.pressureTest.pressure }),
				)),
	];
};

const pressureCases = (
	context: StringContext,
	frame: Frame,
	situation: Situation,
	mud: KnownTable,
	landed: KnownTable,
): readonly LoadCaseResults[] => {
	const { well, path, string, gaps } = context;
	const { sections, temperature } = frame;
	const { inside, outside, name, kind } = situation;
	const r = well.designBasis.temperatureDerating;
	const shared = { path, sections, temperature, r, inside, outside };
	const held =
		name === "cementing"
			? landed
			: heldForce.of({
					path,
					sections,
					landed,
					inside_before: mud,
					outside_before: mud,
					inside,
					outside,
					temperature_before: temperature,
					temperature: name === "stimulation" ? frame.cooled : temperature,
				});
	const cases: LoadCaseResults[] = [];
	if (kind === "collapse")
		cases.push(...caseOf(context, "collapse", name, collapseLine.of({ ...shared, force: landed })));
	else if (frame.couplingsRated) cases.push(...caseOf(context, "burst", name, burstLine.of(shared)));
	else
		gaps.missing(
			`casing.${string.id}.loads.burst-${name}`,
			"The internal pressure rating of a coupling is not known.",
			[["casing", well.strings.indexOf(string), "pipe"]],
		);
	if (name === "stimulation" && frame.jointsRated)
		cases.push(
			...caseOf(context, "tension", name, tensionLine.of({ path, sections, temperature, r, force: held })),
		);
	return [...cases, ...caseOf(context, "triaxial", name, triaxialLine.of({ ...shared, force: held }))];
};

const caseOf = (
	{ well, path, string, gaps }: StringContext,
	kind: LoadCaseResults["kind"],
	situation: LoadSituation,
	line: LoadCaseResults["line"],
	required: Known<"ratio"> = string.designFactors[kind],
): readonly LoadCaseResults[] => {
	const id = `${kind}-${situation}`;
	if (line.rows.length === 0) {
		gaps.missing(
			`casing.${string.id}.loads.${id}`,
			"A rating under this load lies outside its formula's validity.",
			[["casing", well.strings.indexOf(string), "pipe"]],
		);
		return [];
	}
	const factor = leastFactor.of({ line });
	const loaded = Number.isFinite(factor.value);
	return [
		{
			id,
			kind,
			situation,
			line,
			...maybe("least_factor", loaded ? factor : undefined),
			...maybe("at", loaded ? holeMark(path, leastFactorDepth.of({ line }), well.datum) : undefined),
			required,
		},
	];
};
