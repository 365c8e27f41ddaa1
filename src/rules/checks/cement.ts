import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import { type Fact, message, type Said } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { cementOf, noCementReturned } from "../measures/cement.ts";
import { stringOf } from "../measures/shoe.ts";
import { isFlowZone } from "../open-zones.ts";
import { allOf, cannotTell, doesNotApply, met, notMet, type Outcome } from "../outcome.ts";
import { listed, orListed } from "../reason.ts";
import type { Check } from "./check.ts";

const BASIS = {
	planned: message("rules/basis-planned"),
	recorded: message("rules/basis-recorded"),
	calculated: message("rules/basis-calculated"),
} as const;

/** Cement to surface: by record where there is one, else by plan; the sentence says which. */
const atSurface = (the: Case): Outcome => {
	const string = stringOf(the);
	const cement = cementOf(the);
	if (cement === undefined) return cannotTell([missingOf(the, string, "cement", "cement")]);
	const { actual } = string.cement ?? {};
	const basis = cement.top_basis;
	const [upper, lower] = cement.columns;
	if (upper !== undefined && lower !== undefined)
		return notMet(
			message("rules/cement-leaves-annulus-without-any-from-to", {
				basis: BASIS[basis],
				md: upper.bottom.md,
				md2: lower.top.md,
			}),
		);
	if (!cement.to_surface)
		return notMet(
			message("rules/cement-top-is-at-not-at-surface", { basis: BASIS[basis], md: cement.top.md }),
		);
	if (actual?.returnsToSurface !== undefined && actual.returnsToSurface.value <= 0)
		return notMet(noCementReturned(the));
	if (actual?.returnsToSurface !== undefined)
		return met(
			message("rules/record-shows-cement-returned-to-surface", { returnsToSurface: actual.returnsToSurface }),
		);
	return met(message("rules/cement-column-reaches-ground-level", { basis: BASIS[basis] }));
};

const cementClass = (the: Case, { words }: Extract<LimitLeaf, { form: "one of" }>): Outcome => {
	const string = stringOf(the);
	const slurries = string.cement?.slurries ?? [];
	if (slurries.length === 0) return cannotTell([missingOf(the, string, "cement", "cement")]);
	const unknown = slurries.flatMap(({ id, cementClass: found }, i) =>
		found === undefined
			? [missingOf(the, string, message("rules/class-slurry", { id }), "cement", "slurries", i, "class")]
			: [],
	);
	if (unknown.length > 0) return cannotTell(unknown);
	const key = (text: string) =>
		text
			.trim()
			.replace(/^class\s+/i, "")
			.toUpperCase();
	const allowed = words.map(key);
	const outside = slurries.filter(({ cementClass: found = "" }) => !allowed.includes(key(found)));
	const named = listed([...new Set(slurries.map(({ cementClass: found = "" }) => found))]);
	return outside.length === 0
		? met(message("rules/slurries-are-class", { named }))
		: notMet(
				message("rules/slurries-of-other-class", {
					outside: listed(
						outside.map(({ id, cementClass: found }) =>
							message("rules/slurry-is-of-class", { id, found: found ?? "" }),
						),
					),
					words: orListed(words),
				}),
			);
};

const plugs = (the: Case, { words }: Extract<LimitLeaf, { form: "includes" }>): Outcome => {
	const string = stringOf(the);
	const given = string.cement?.plugs ?? [];
	if (given.length === 0)
		return cannotTell([missingOf(the, string, message("rules/cementing-plugs"), "cement", "plugs")]);
	const lower = given.map((plug) => plug.toLowerCase());
	const without = words.filter((word) => !lower.some((plug) => plug.includes(word.toLowerCase())));
	const listedPlugs = message("rules/plugs-named", { plugs: { list: given, joined: "and" } });
	return without.length === 0
		? met(message("rules/plug-is-among-them", { listedPlugs, words: listed(words) }))
		: notMet(message("rules/no-plug-is-among-them", { listedPlugs, orListed: orListed(without) }));
};

interface Covered {
	readonly name: Said;
	readonly top: number;
	readonly base: number;
}

/** Cement columns on the vertical axis, whatever string they stand behind. */
const columnsOf = ({ results }: Case) =>
	Object.values(results.cement).flatMap(({ id, columns, top_basis }) =>
		columns.map(({ top, bottom }) => ({
			id,
			top: top.tvd.value,
			bottom: bottom.tvd.value,
			basis: top_basis,
		})),
	);

/** `the planned cement of the surface and intermediate strings`. */
const coveringWords = (
	columns: readonly { readonly id: string; readonly basis: keyof typeof BASIS }[],
): Fact =>
	listed(
		[...new Set(columns.map(({ basis }) => basis))].map((basis) => {
			const ids = columns.filter((column) => column.basis === basis).map(({ id }) => id);
			return message("rules/cement-of-strings", {
				basis: BASIS[basis],
				count: ids.length,
				ids: listed(ids),
			});
		}),
	);

const coverageOf = (the: Case, zones: readonly Covered[]): Outcome => {
	const columns = columnsOf(the);
	const total = the.results.trajectory.total_depth.tvd.value;
	return allOf(
		zones.map(({ name, top, base }) => {
			// A zone that goes on below the well has to be covered only as far as the hole opens it.
			const bottom = Math.min(base, total);
			if (top >= total) return doesNotApply(message("rules/well-does-not-reach", { name }));
			const found = columns.filter((column) => column.top <= top && bottom <= column.bottom);
			return found.length === 0
				? notMet(message("rules/no-single-cement-column-covers-from-top", { name }))
				: met(message("rules/zone-is-covered", { name, columns: coveringWords(found) }));
		}),
	);
};

const covers = (the: Case, { what, formations }: Extract<LimitLeaf, { form: "covers" }>): Outcome => {
	const { geology } = the.well;
	const parts: Outcome[] = [];
	const base = geology.protectedWater?.base.value;
	if (what.includes("protected water"))
		parts.push(
			base === undefined
				? cannotTell([missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base")])
				: coverageOf(the, [
						{ name: message("rules/protected-water"), top: the.well.datum.groundLevel.value, base },
					]),
		);
	const zonesOf = (chosen: typeof geology.formations) =>
		chosen.map(({ name, top, base: bottom }) => ({
			name,
			top: top.value,
			base: bottom?.value ?? Number.POSITIVE_INFINITY,
		}));
	const flowing = geology.formations.filter((each) => isFlowZone(each) && !each.target);
	if (what.includes("flow zones"))
		parts.push(
			flowing.length === 0
				? doesNotApply(message("rules/no-formation-is-marked-as-flow-zone"))
				: coverageOf(the, zonesOf(flowing)),
		);
	if (what.includes("target"))
		parts.push(coverageOf(the, zonesOf(geology.formations.filter(({ target }) => target))));
	for (const name of formations) {
		const found = geology.formations.filter((each) => each.name.toLowerCase().includes(name.toLowerCase()));
		parts.push(
			found.length === 0
				? cannotTell([missingAt(message("rules/extent", { name }), "geology", "formations")])
				: coverageOf(the, zonesOf(found)),
		);
	}
	return allOf(parts);
};

export const cementChecks = {
	"cement-to-surface": {
		title: "Cement to surface",
		looksAt:
			"planned or recorded cement top, returns seen at surface, volume planned against volume calculated",
		explain:
			"Cement from shoe to surface leaves no open annulus past fresh water. A planned column is judged as a plan and the finding says " +
			"so; once the job is recorded the record is judged. Cement can fall back after returns; the record has to say so.",
		forms: { "at surface": atSurface },
	},
	"cement-top": {
		title: "Top of cement",
		looksAt:
			"cement top against the shoe, the shallowest flow zone, the previous shoe, the perforations or the kickoff",
		explain:
			"Cement behind deeper strings has to rise a distance above what it isolates. Rules count along the hole or vertically, and some ask " +
			"for less where the top is better known (a log) than where it is calculated. Formations without a mark are taken not to flow.",
		forms: { "at surface": atSurface },
	},
	"cement-coverage": {
		title: "Zones behind cement",
		looksAt:
			"cement columns of all strings against protected water, flow zones, the target or a named formation",
		explain:
			"Every zone named by the rule must lie behind one cement column from top to bottom. The check sees planned or recorded tops; it " +
			"cannot see a channel in the cement.",
		forms: { covers },
	},
	"cement-class": {
		title: "Class of cement",
		looksAt: "class of each slurry of the string",
		explain:
			"Some rules name the standards or classes that cement has to belong to. Classes are compared by their letter or type, not by what is in the sack.",
		forms: { "one of": cementClass },
	},
	"cement-strength": {
		title: "Strength of cement",
		looksAt: "laboratory strengths of the slurries in the zone of the string that the rule names",
		explain:
			"The rule gives a strength at a time for a part of the string. Cement gains strength, so a test at an earlier time bounds it from " +
			"below and a later one from above; between the two the check cannot tell, and nothing is interpolated.",
	},
	"free-fluid": {
		title: "Free fluid of cement",
		looksAt: "free fluid of the slurries in the zone of the string that the rule names",
		explain:
			"Water that separates from a standing slurry leaves a channel. The rule gives the most that may separate.",
	},
	"critical-cement-length": {
		title: "Length of cement at the shoe",
		looksAt: "length of the lowest slurry against the zone of critical cement",
		explain:
			"Rules define a zone above the shoe that has to hold cement of higher strength. The check compares the length of the slurry placed " +
			"at the shoe with that zone; its strength is a check of its own.",
	},
	"wait-on-cement": {
		title: "Wait on cement",
		looksAt: "planned wait, and strength at its end",
		explain:
			"Nothing disturbs the pipe until the cement has set. Rules ask for hours, for a strength, for either or for both; the strength is " +
			"taken at the end of the planned wait.",
	},
	"cementing-plugs": {
		title: "Cementing plugs",
		looksAt: "plugs named in the cement job",
		explain:
			"Plugs keep cement, spacer and mud apart in the pipe. The rule names the plugs that have to be run.",
		forms: { includes: plugs },
	},
} as const satisfies Readonly<Record<string, Check>>;
