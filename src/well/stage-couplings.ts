import type { Known } from "../cite/known.ts";
import type { StimulationDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { cellValue, readNamedTable } from "./read-table.ts";
import { asWritten, measured } from "./said.ts";
import type { Stage } from "./well.ts";

type Couplings = StimulationDefinition["stages"]["couplings"];

const AT: Path = ["stimulation", "stages", "couplings"];
const COLUMNS = { coupling: { dimension: "measured-depth", aliases: ["md"] } } as const;

interface Near {
	readonly what: Said;
	readonly depth: Known<"measured-depth">;
	readonly coupling: Known<"measured-depth">;
}

/** Plugs and clusters keep the stated clearance from every coupling of the tally; the nearest few are named at once. */
export const keepClearOfCouplings = (
	couplings: Couplings,
	stages: readonly Stage[],
	files: ReadFile,
	desk: Desk,
): void => {
	if (couplings === undefined) return;
	const at: Path = [...AT, "file"];
	const read = readNamedTable(couplings.file, at, COLUMNS, files, desk, couplings.columns);
	if (read === undefined) return;
	const depths = read.columns.rows.flatMap(
		(row) => cellValue(row, "coupling", "measured-depth", at, couplings.file) ?? [],
	);
	const near = stages.flatMap(({ number, plug, clusters }) => [
		...nearest(
			message("well/plug-stage", { number: String(number) }),
			plug === undefined ? [] : [plug],
			depths,
			couplings.clearance.value,
		),
		...nearest(
			message("well/cluster-stage", { number: String(number) }),
			clusters,
			depths,
			couplings.clearance.value,
		),
	]);
	const [first] = near;
	if (first === undefined) return;
	const others = near.length - 1;
	fault(desk, "well/coupling-near", placeOf(couplings.clearance, [...AT, "clearance"]), {
		what: message("well/coupling-near.what", { what: first.what, others }),
		expected: message("well/coupling-near.expected", { clearance: asWritten(couplings.clearance) }),
		found: message("well/coupling-near.found", {
			depth: measured("measured-depth", first.depth.value, first.coupling.value),
			coupling: measured("measured-depth", first.coupling.value, first.depth.value),
		}),
		mend: message("well/coupling-near.mend"),
	});
};

const nearest = (
	what: Said,
	depths: readonly Known<"measured-depth">[],
	couplings: readonly Known<"measured-depth">[],
	clearance: number,
): readonly Near[] =>
	depths.flatMap((depth) => {
		const coupling = couplings.find(({ value }) => Math.abs(value - depth.value) < clearance);
		return coupling === undefined ? [] : [{ what, depth, coupling }];
	});
