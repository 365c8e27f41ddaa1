import type { Known } from "../cite/known.ts";
import type { CasingDefinition, CementDefinition } from "../definition/definition.ts";
import type { BOND_QUALITIES, SEAL_SURVEYS, SEAL_TESTS } from "../definition/isolation-evidence.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { cementDepth } from "./datum.ts";
import { type Desk, fault, maybe, placeOf, SAME_DEPTH } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";
import { cellValue, readNamedTable } from "./read-table.ts";
import { asWritten } from "./said.ts";
import type { Datum } from "./well.ts";

type Md = Known<"measured-depth">;

/** A stretch over which a bond log reads alike. */
export interface LoggedInterval {
	readonly top: Md;
	readonly bottom: Md;
	readonly amplitude?: Known<"sonic-amplitude">;
	/** As stated. */
	readonly index?: Known<"share">;
	/** As the analyst grades it. */
	readonly quality?: (typeof BOND_QUALITIES)[number];
}

interface BondLog {
	readonly date: string;
	readonly runBy?: string;
	readonly statedBy?: string;
	readonly freePipe?: Known<"sonic-amplitude">;
	readonly fullBond?: Known<"sonic-amplitude">;
	/** From the top down. */
	readonly intervals: readonly LoggedInterval[];
}

/** What shows whether the cement of a string seals. */
export interface SealEvidence {
	readonly bondLog?: BondLog;
	readonly surveys: readonly {
		readonly kind: (typeof SEAL_SURVEYS)[number];
		readonly date: string;
		readonly top: Md;
		readonly bottom: Md;
		readonly showsCement: boolean;
		readonly statedBy?: string;
	}[];
	readonly tests: readonly {
		readonly through: (typeof SEAL_TESTS)[number];
		readonly date: string;
		readonly top: Md;
		readonly bottom: Md;
		readonly pressure: Known<"pressure">;
		readonly hold?: Known<"duration">;
		readonly held: boolean;
		readonly witnessedBy?: string;
	}[];
	readonly squeezes: readonly {
		readonly date: string;
		readonly why: string;
		readonly top: Md;
		readonly bottom: Md;
		readonly volume?: Known<"volume">;
		readonly pressure?: Known<"pressure">;
		/** Absent where nothing tested it. */
		readonly held?: boolean;
		readonly testedBy?: string;
	}[];
}

/** One reading of the annulus outside a string. */
export interface AnnulusReading {
	readonly date: string;
	readonly pressure: Known<"pressure">;
	readonly bledTo?: Known<"pressure">;
	readonly bledIn?: Known<"duration">;
	readonly rebuiltTo?: Known<"pressure">;
	readonly rebuiltIn?: Known<"duration">;
}

type Written = NonNullable<CementDefinition["actual"]>;

/** Where the evidence is, and how deep it may reach. */
interface SealPlace {
	/** Of `cement: actual:`. */
	readonly at: Path;
	readonly datum: Datum;
	readonly shoe: Md;
	readonly files: ReadFile;
}

/** What the record shows of the seal, where it shows anything; every stretch runs downward and ends at the shoe or above. */
export const resolveSealEvidence = (
	written: Written,
	place: SealPlace,
	desk: Desk,
): SealEvidence | undefined => {
	const { at, datum } = place;
	const { bond_log, surveys, seal_tests, squeezes } = written;
	if ([bond_log, surveys, seal_tests, squeezes].every((each) => each === undefined)) return undefined;
	const stretch = <T extends { readonly from: Parameters<typeof cementDepth>[0]; readonly to: Md }>(
		each: T,
		path: Path,
	) => {
		const [top, bottom] = [cementDepth(each.from, datum), each.to];
		runsDownToShoe(top, bottom, path, place, desk);
		return { top, bottom };
	};
	return {
		...maybe("bondLog", written.bond_log && resolveBondLog(written.bond_log, place, desk)),
		surveys: (written.surveys ?? []).map((each, i) => ({
			kind: each.kind,
			date: each.date,
			...stretch(each, [...at, "surveys", i]),
			showsCement: each.shows_cement,
			...maybe("statedBy", each.stated_by),
		})),
		tests: (written.seal_tests ?? []).map((each, i) => ({
			through: each.through,
			date: each.date,
			...stretch(each, [...at, "seal_tests", i]),
			pressure: each.pressure,
			...maybe("hold", each.hold),
			held: each.held,
			...maybe("witnessedBy", each.witnessed_by),
		})),
		squeezes: (written.squeezes ?? []).map((each, i) => ({
			date: each.date,
			why: each.why,
			...stretch(each, [...at, "squeezes", i]),
			...maybe("volume", each.volume),
			...maybe("pressure", each.pressure),
			...maybe("held", each.held),
			...maybe("testedBy", each.tested_by),
		})),
	};
};

/** Readings of the annulus outside a string, as written. */
export const resolveAnnulusReadings = (
	written: CasingDefinition["annulus_readings"],
): readonly AnnulusReading[] | undefined =>
	written?.map((each) => ({
		date: each.date,
		pressure: each.pressure,
		...maybe("bledTo", each.bled_to),
		...maybe("bledIn", each.bled_in),
		...maybe("rebuiltTo", each.rebuilt_to),
		...maybe("rebuiltIn", each.rebuilt_in),
	}));

const COLUMNS = {
	from: { dimension: "measured-depth", aliases: ["top"] },
	to: { dimension: "measured-depth", aliases: ["bottom", "base"] },
	amplitude: { dimension: "sonic-amplitude", optional: true },
	bond_index: { dimension: "share", optional: true },
	quality: { dimension: "text", optional: true },
} as const;

const QUALITIES: readonly string[] = [
	"good",
	"fair",
	"poor",
	"none",
] satisfies (typeof BOND_QUALITIES)[number][];

const resolveBondLog = (written: NonNullable<Written["bond_log"]>, place: SealPlace, desk: Desk): BondLog => {
	const at: Path = [...place.at, "bond_log"];
	const [listed, named] = [written.intervals, written.file];
	if ((listed === undefined) === (named === undefined))
		fault(desk, "well/seal-evidence", at, {
			what:
				listed === undefined
					? message("well/seal-evidence.no-intervals")
					: message("well/seal-evidence.both-intervals-and-file"),
			expected: message("well/seal-evidence.one-of-the-two"),
			mend: message("well/seal-evidence.keep-one"),
		});
	const { free_pipe: free, full_bond: full } = written;
	if (free !== undefined && full !== undefined && full.value >= free.value)
		fault(desk, "well/seal-evidence", placeOf(full, [...at, "full_bond"]), {
			what: message("well/seal-evidence.full-not-below-free"),
			expected: message("well/seal-evidence.less-than", { than: asWritten(free) }),
			found: asWritten(full),
			mend: message("well/seal-evidence.swap-amplitudes"),
		});
	const intervals = [
		...(listed ?? []).map((each, i) => ({
			path: [...at, "intervals", i] satisfies Path as Path,
			interval: {
				top: cementDepth(each.from, place.datum),
				bottom: each.to,
				...maybe("amplitude", each.amplitude),
				...maybe("index", each.bond_index),
				...maybe("quality", each.quality),
			} satisfies LoggedInterval as LoggedInterval,
		})),
		...(named === undefined ? [] : ofFile(named, written.columns, [...at, "file"], place.files, desk)),
	];
	let above: LoggedInterval | undefined;
	for (const { interval, path } of intervals) {
		const sound = runsDownToShoe(interval.top, interval.bottom, path, place, desk);
		if (sound && above !== undefined && interval.top.value < above.bottom.value - SAME_DEPTH)
			fault(desk, "well/seal-evidence", placeOf(interval.top, [...path, "from"]), {
				what: message("well/seal-evidence.intervals-overlap"),
				expected: message("well/seal-evidence.at-or-below", { bottom: asWritten(above.bottom) }),
				found: asWritten(interval.top),
				mend: message("well/seal-evidence.from-the-top-down"),
			});
		above = interval;
	}
	return {
		date: written.date,
		...maybe("runBy", written.run_by),
		...maybe("statedBy", written.stated_by),
		...maybe("freePipe", free),
		...maybe("fullBond", full),
		intervals: intervals.map(({ interval }) => interval),
	};
};

const ofFile = (
	name: string,
	stated: NonNullable<Written["bond_log"]>["columns"],
	at: Path,
	files: ReadFile,
	desk: Desk,
): readonly { readonly path: Path; readonly interval: LoggedInterval }[] => {
	const read = readNamedTable(name, at, COLUMNS, files, desk, stated);
	return (read?.columns.rows ?? []).flatMap((row) => {
		const depth = (column: "from" | "to") => cellValue(row, column, "measured-depth", at, name);
		const [top, bottom] = [depth("from"), depth("to")];
		const quality = row.texts.quality?.trim().toLowerCase();
		if (top === undefined || bottom === undefined) return [];
		if (quality !== undefined && quality !== "" && !QUALITIES.includes(quality))
			fault(desk, "well/seal-evidence", row.at.quality ?? { path: at }, {
				what: message("well/seal-evidence.quality-unknown"),
				expected: message("source/one-of", { names: QUALITIES.join(", ") }),
				found: quality,
				mend: message("well/seal-evidence.write-one-of-them"),
			});
		return [
			{
				path: at,
				interval: {
					top,
					bottom,
					...maybe("amplitude", cellValue(row, "amplitude", "sonic-amplitude", at, name)),
					...maybe("index", cellValue(row, "bond_index", "share", at, name)),
					...maybe(
						"quality",
						QUALITIES.includes(quality ?? "") ? (quality as LoggedInterval["quality"]) : undefined,
					),
				},
			},
		];
	});
};

const runsDownToShoe = (top: Md, bottom: Md, path: Path, { shoe }: SealPlace, desk: Desk): boolean => {
	if (bottom.value <= top.value) {
		fault(desk, "well/seal-evidence", placeOf(bottom, [...path, "to"]), {
			what: message("well/seal-evidence.ends-above-its-top"),
			expected: message("well/seal-evidence.below", { top: asWritten(top) }),
			found: asWritten(bottom),
			mend: message("well/seal-evidence.swap-depths"),
		});
		return false;
	}
	if (bottom.value > shoe.value + SAME_DEPTH) {
		fault(desk, "well/seal-evidence", placeOf(bottom, [...path, "to"]), {
			what: message("well/seal-evidence.reaches-below-shoe"),
			expected: message("well/seal-evidence.at-most", { shoe: asWritten(shoe) }),
			found: asWritten(bottom),
			mend: message("well/seal-evidence.end-at-shoe"),
		});
		return false;
	}
	return true;
};
