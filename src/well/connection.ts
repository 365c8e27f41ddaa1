import type { CasingRow } from "../catalog/casing-table.ts";
import type { ThreadRow } from "../catalog/thread-table.ts";
import type { Known } from "../cite/known.ts";
import type { ThreadDimensions } from "./well.ts";

/** Connections whose strength the standard gives, and pipe without any. */
type StandardConnection = "STC" | "LTC" | "BTC" | "BTC special clearance" | "plain end";

const WRITTEN: Readonly<Record<string, StandardConnection>> = {
	STC: "STC",
	"SHORT THREAD": "STC",
	"SHORT ROUND": "STC",
	LTC: "LTC",
	"LONG THREAD": "LTC",
	"LONG ROUND": "LTC",
	BTC: "BTC",
	BUTTRESS: "BTC",
	"BTC SPECIAL CLEARANCE": "BTC special clearance",
	"BUTTRESS SPECIAL CLEARANCE": "BTC special clearance",
	"SPECIAL CLEARANCE": "BTC special clearance",
	"SPECIAL CLEARANCE BTC": "BTC special clearance",
	"BTC SC": "BTC special clearance",
	"PLAIN END": "plain end",
	PE: "plain end",
	WELDED: "plain end",
	WELD: "plain end",
};

/** The standard connection meant, or nothing: a maker's own. */
export const standardConnection = (written: string): StandardConnection | undefined =>
	WRITTEN[
		written
			.trim()
			.replace(/[\s-]+/g, " ")
			.toUpperCase()
	];

/** Outside diameter of the standard coupling; every weight of a size has the same. None where the size has no such coupling. */
export const standardCoupling = (
	connection: StandardConnection,
	row: CasingRow | undefined,
): Known<"diameter"> | undefined => {
	if (row === undefined || connection === "plain end") return undefined;
	if (connection === "BTC special clearance") return row.couplingDiameter.specialClearance;
	return connection === "BTC" ? row.couplingDiameter.buttress : row.couplingDiameter.round;
};

/** Thread dimensions of a standard connection; nothing for plain end, and for a long thread that the size does not have. */
export const threadDimensions = (
	connection: StandardConnection,
	row: ThreadRow,
): ThreadDimensions | undefined => {
	if (connection === "plain end") return undefined;
	if (connection === "BTC" || connection === "BTC special clearance")
		return { kind: "buttress", ...row.buttress };
	const lengths = connection === "STC" ? row.round.short : row.round.long;
	const { M, E1, A } = row.round;
	return lengths === undefined ? undefined : { kind: "round", M, E1, A, ...lengths };
};
