import { formula } from "../../cite/formula.ts";
import type { Known, KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { OffsetWell } from "../../definition/definition.ts";
import { hasErrors } from "../../diagnostics/diagnostic.ts";
import { distinctIds } from "../../well/names.ts";
import type { OffsetPath, Well } from "../../well/well.ts";
import { maybe, openGaps } from "../gaps.ts";
import type { TrajectoryResults } from "../results.ts";
import { surveyErrorOf } from "../trajectory/survey-error-results.ts";
import { trajectoryResults } from "../trajectory/trajectory-results.ts";

/** Elevation of a depth datum [ft]. */
export const datumElevation = formula({
	id: "site/datum-elevation",
	name: "Elevation of a depth datum",
	expression: "E_d = E_g + h",
	source: cite("definition", "ground elevation and height of the datum above ground"),
	inputs: { E_g: "elevation", h: "length" },
	gives: "elevation",
	compute: ({ E_g, h }) => E_g + h,
});

/** A well of a pad with its path, as the other wells of the pad meet it. */
export interface PadWell {
	/** Its definition. */
	readonly file: string;
	readonly well: Well;
	readonly trajectory: TrajectoryResults;
	/** What its survey tool errs by, where it states one. */
	readonly covariance?: KnownTable;
}

/** A well with its path; nothing where it has none, which is told when the well itself is calculated. */
export const padWell = (file: string, well: Well): PadWell | undefined => {
	const found = trajectoryResults(well);
	if (found.value === undefined || hasErrors(found.diagnostics)) return undefined;
	return {
		file,
		well,
		trajectory: found.value,
		...maybe("covariance", surveyErrorOf(well, found.value.path, openGaps())?.covariance),
	};
};

/**
 * A well that knows the others of its pad: each is a well nearby, with its own path and what its survey errs by. What the
 * definition says of one by its name, such as its barriers, stays.
 */
export const amongPad = (well: Well, others: readonly PadWell[]): Well => {
	const named = (name: string) => well.offsetWells.find((entry) => entry.name === name);
	const fresh = others.filter((other) => named(other.well.identity.name) === undefined);
	const stated = well.offsetWells.filter(
		({ name }) => !others.some((other) => other.well.identity.name === name),
	);
	const taken = well.offsetWells.map(({ name }) => name);
	const ids = distinctIds([...taken, ...fresh.map((other) => other.well.identity.name)]).slice(taken.length);
	const idOf = (other: PadWell): string =>
		named(other.well.identity.name)?.id ?? ids[fresh.indexOf(other)] ?? other.file;
	const entries = others.map((other, i) =>
		asOffset(other, named(other.well.identity.name), idOf(other), stated.length + i),
	);
	const gone = new Set(others.map(idOf));
	return {
		...well,
		site: { ...well.site, pad: { ...well.site.pad, other_wells: otherWells(well, others) } },
		offsetWells: [...stated, ...entries.map(({ entry }) => entry)],
		offsetPaths: {
			...well.offsetPaths,
			paths: [
				...well.offsetPaths.paths.filter(({ id }) => !gone.has(id)),
				...entries.map(({ path }) => path),
			],
		},
	};
};

type OtherWells = NonNullable<NonNullable<Well["site"]["pad"]>["other_wells"]>;

/** Those that the definition names, and those of the pad that it does not. */
const otherWells = ({ site }: Well, others: readonly PadWell[]): OtherWells => {
	const listed = site.pad?.other_wells ?? [];
	return [
		...listed,
		...others
			.filter(({ well }) => listed.every(({ name }) => name !== well.identity.name))
			.map((other) => ({ name: other.well.identity.name, status: statusOf(other) })),
	];
};

const statusOf = ({ trajectory }: PadWell): string =>
	trajectory.basis === "surveyed" ? "drilled" : "planned";

const asOffset = (
	other: PadWell,
	said: OffsetWell | undefined,
	id: string,
	index: number,
): { readonly entry: OffsetWell; readonly path: OffsetPath } => {
	const { file, well, trajectory, covariance } = other;
	const { identity, site, datum, holes } = well;
	const home = site.surface_location;
	/** The same value, told as written in the other well's definition. */
	const theirs = <K extends Known | undefined>(known: K): K =>
		known?.from.kind === "definition" ? { ...known, from: { file, ...known.from } } : known;
	const table = <T extends KnownTable>(rows: T): T => ({
		...rows,
		from: { kind: "definition", at: ["site", "offset_wells", index, "path"], text: identity.name, file },
	});
	const widest = holes.toSorted((a, b) => b.diameter.value - a.diameter.value)[0]?.diameter;
	const uncertainty = well.trajectory.uncertainty;
	const entry: OffsetWell = {
		...said,
		id,
		name: identity.name,
		operator: identity.operator,
		status: said?.status ?? statusOf(other),
		...maybe("api_number", identity.api_number),
		...maybe("latitude", theirs(home?.latitude)),
		...maybe("longitude", theirs(home?.longitude)),
		...maybe("datum", home?.datum),
		...maybe("hole_diameter", theirs(widest)),
		depth_datum_elevation: datumElevation.of({
			E_g: theirs(datum.groundElevation),
			h: theirs(datum.aboveGround),
		}),
		path: {
			...(uncertainty === undefined
				? {}
				: { uncertainty: { ...uncertainty, radius: theirs(uncertainty.radius) } }),
		},
	};
	const { path } = trajectory;
	return {
		entry,
		path: {
			id,
			kind: "surveyed",
			stations: table(path),
			...maybe("north", site.north?.reference),
			...maybe("covariance", covariance && table(covariance)),
		},
	};
};
