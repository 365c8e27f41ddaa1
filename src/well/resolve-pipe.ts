import type { CasingRow } from "../catalog/casing-table.ts";
import type { Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import type { PipeDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { pathKey } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";
import { standardConnection, standardCoupling, threadDimensions } from "./connection.ts";
import { pipeDepth } from "./datum.ts";
import { assume, assumeWord, type Desk, fault, maybe, placeOf } from "./desk.ts";
import { drift, insideDiameter, isPipe } from "./pipe-dimensions.ts";
import { asWritten, choiceOf } from "./said.ts";
import { unknownGrade, unknownPipe } from "./unknown-pipe.ts";
import type { Datum, PipeSection } from "./well.ts";

/** A section with the row it was found in, which later checks ask for an alternate drift. */
export interface FoundSection {
	readonly section: PipeSection;
	readonly row?: CasingRow;
	readonly at: Path;
}

/** Tolerance of a stated wall against the catalogue's [in]. */
const SAME_WALL = 0.0025;

/** One run of pipe joined with its catalogue rows; nothing where its wall or strength cannot be known. */
export const resolvePipe = (
	written: PipeDefinition,
	at: Path,
	number: number,
	datum: Datum,
	desk: Desk,
): FoundSection | undefined => {
	const body = findBody(written, at, desk);
	const strength = findStrength(written, at, desk);
	if (body !== undefined && strength !== undefined) checkListed(written, at, body.row, desk);
	const connection = body === undefined ? undefined : findConnection(written, at, body, desk);
	if (body === undefined || strength === undefined || connection === undefined) return undefined;
	const { row } = body;
	const { ratings } = written;
	const section: PipeSection = {
		number,
		outsideDiameter: body.od,
		nominalWeight: body.weight,
		wall: body.wall,
		insideDiameter: insideDiameter.of({ D: body.od, t: body.wall }),
		drift: written.drift ?? row?.drift ?? drift.of({ D: body.od, t: body.wall }),
		...connection,
		...strength,
		...sourOf(written, desk),
		condition:
			written.condition ??
			assumeWord(desk, "new", {
				id: `condition.${pathKey(at)}`,
				at: [...at, "condition"],
				what: message("well/pipe-condition.what"),
				why: message("well/pipe-condition.why"),
			}),
		...maybe("joint", written.joint),
		top: pipeDepth(written.from, datum),
		bottom: written.to,
		...(ratings === undefined
			? {}
			: {
					stated: {
						...maybe("internalYield", ratings.internal_yield),
						...maybe("collapse", ratings.collapse),
						...maybe("tension", ratings.tension),
						...maybe("sourService", ratings.sour_service),
						source: ratings.source,
					},
				}),
	};
	return { section, at, ...maybe("row", row) };
};

/** What the standard says of the steel as written: a grade's name without its type stands for the usual type. */
const sourOf = (written: PipeDefinition, desk: Desk): Pick<PipeSection, "sourService"> => {
	const row = desk.catalog.findSourService(written.grade);
	return row === undefined
		? {}
		: {
				sourService: {
					source: row.source,
					...maybe("lowestTemperature", row.lowestTemperature),
				},
			};
};

interface Body {
	readonly od: Known<"diameter">;
	readonly weight: Known<"linear-weight">;
	readonly wall: Known<"diameter">;
	readonly row?: CasingRow;
}

const findBody = (written: PipeDefinition, at: Path, desk: Desk): Body | undefined => {
	const { od, weight, wall } = written;
	const row =
		weight !== undefined
			? desk.catalog.findCasing(od.value, weight.value)
			: wall === undefined
				? undefined
				: desk.catalog.findCasingByWall(od.value, wall.value);
	if (row !== undefined) {
		if (wall !== undefined && Math.abs(wall.value - row.wall.value) > SAME_WALL)
			return fault(desk, "well/pipe-wall", placeOf(wall, [...at, "wall"]), {
				what: message("well/pipe-wall.what", { row: row.id }),
				expected: asWritten(row.wall),
				found: asWritten(wall),
				mend: message("well/pipe-wall.mend"),
			});
		return {
			od: exactOr(od, row.outsideDiameter),
			weight: exactOr(weight, row.nominalWeight),
			wall: row.wall,
			row,
		};
	}
	if (weight === undefined || wall === undefined || !isPipe(od.value, wall.value))
		return unknownPipe(written, at, desk);
	return { od, weight, wall };
};

/** What was typed where it is the catalogue's figure; a label rounded in other units stands for that figure. */
/** A value of the catalogue as this pipe's own: strings of one grade would else be traced to the first of them. */
const own = <D extends Dimension>(listed: Known<D> | undefined): Known<D> | undefined =>
	listed && { ...listed };

const exactOr = <D extends Dimension>(typed: Known<D> | undefined, listed: Known<D>): Known<D> =>
	typed !== undefined && Math.abs(typed.value - listed.value) < 1e-9 ? typed : listed;

const findStrength = (
	written: PipeDefinition,
	at: Path,
	desk: Desk,
): Pick<PipeSection, "grade" | "minimumYield" | "minimumTensile"> | undefined => {
	const row = desk.catalog.findGrade(written.grade);
	const minimumYield = written.minimum_yield ?? own(row?.minimumYield);
	if (minimumYield === undefined) return unknownGrade(written.grade, [...at, "grade"], desk);
	return {
		grade: row?.id ?? written.grade,
		minimumYield,
		minimumTensile:
			written.minimum_tensile ??
			own(row?.minimumTensile) ??
			assume(desk, {
				id: `tensile.${pathKey(at)}`,
				at: [...at, "minimum_tensile"],
				what: message("well/tensile-strength.what", { grade: written.grade }),
				why: message("well/tensile-strength.why"),
				dimension: "pressure",
				value: minimumYield.value,
				source: cite("common-practice"),
			}),
	};
};

const checkListed = (written: PipeDefinition, at: Path, row: CasingRow | undefined, desk: Desk): void => {
	const grade = desk.catalog.findGrade(written.grade)?.id;
	if (row === undefined || grade === undefined || row.grades.length === 0 || row.grades.includes(grade))
		return;
	fault(
		desk,
		"well/grade-not-listed",
		{ path: [...at, "grade"] },
		{
			what: message("well/grade-not-listed.what", { row: row.id, grade }),
			expected: message("well/unknown-grade.expected", { grades: choiceOf(row.grades) }),
			found: written.grade,
			mend: message("well/grade-not-listed.mend"),
			source: "api-5ct",
		},
	);
};

const findConnection = (
	written: PipeDefinition,
	at: Path,
	body: Body,
	desk: Desk,
): Pick<PipeSection, "connection" | "couplingDiameter" | "threads"> | undefined => {
	const standard = standardConnection(written.connection);
	const path: Path = [...at, "connection"];
	if (standard === undefined) {
		if (written.ratings === undefined)
			fault(desk, "well/connection-unrated", path, {
				what: message("well/connection-unrated.what", { connection: written.connection }),
				expected: message("well/connection-unrated.expected"),
				found: written.connection,
				mend: message("well/connection-unrated.mend"),
			});
		return {
			connection: written.connection,
			...maybe("couplingDiameter", written.coupling_od),
		};
	}
	const row = desk.catalog.threadsFor(written.od.value, body.weight.value);
	const threads = row === undefined ? undefined : threadDimensions(standard, row);
	if (row !== undefined && threads === undefined && standard !== "plain end")
		return fault(desk, "well/connection-size", path, {
			what: message("well/connection-size.what", { standard, row: row.id }),
			expected: message("well/connection-size.expected"),
			found: written.connection,
			mend: message("well/connection-size.mend"),
			source: "api-5ct",
		});
	const sized = body.row ?? desk.catalog.casingOfSize(body.od.value)[0];
	const coupling = written.coupling_od ?? standardCoupling(standard, sized);
	if (standard === "BTC special clearance" && sized !== undefined && coupling === undefined)
		return fault(desk, "well/connection-size", path, {
			what: message("well/connection-size.there-is-no-special-clearance", { sized: sized.id }),
			expected: message("well/connection-size.btc-or-couplings-own-diameter"),
			found: written.connection,
			mend: message("well/connection-size.name-connection-that-pipe-has"),
			source: "api-5ct",
		});
	return {
		connection: standard,
		...maybe("couplingDiameter", coupling),
		...maybe("threads", threads),
	};
};
