import type { Known } from "../cite/known.ts";
import type { EndOfLifeDefinition } from "../definition/end-of-life.ts";
import { message } from "../messages/message.ts";
import { cementDepth } from "./datum.ts";
import { type Desk, fault, maybe, placeOf } from "./desk.ts";
import { asWritten } from "./said.ts";
import type { Datum } from "./well.ts";

interface AbandonmentPlug {
	readonly what: string;
	readonly top: Known<"measured-depth">;
	readonly bottom: Known<"measured-depth">;
	readonly on?: string;
	readonly excess?: Known<"share">;
	readonly tagged?: boolean;
	readonly rule?: string;
}

interface AfterCare {
	readonly what: string;
	readonly first: string;
	readonly everyMonths?: Known<"count">;
	readonly times?: Known<"count">;
	readonly by?: string;
}

export interface EndOfLife {
	readonly plugs: readonly AbandonmentPlug[];
	readonly yield?: Known<"slurry-yield">;
	readonly density?: Known<"density">;
	readonly cutBelowGround?: Known<"length">;
	readonly restoration?: string;
	readonly paidBy?: string;
	readonly bond?: string;
	readonly afterCare: readonly AfterCare[];
}

/** Plugs run downward; the rest as written. */
export const resolveEndOfLife = (
	written: EndOfLifeDefinition | undefined,
	datum: Datum,
	desk: Desk,
): EndOfLife | undefined =>
	written && {
		plugs: (written.plugs ?? []).map((plug, i) => {
			const [top, bottom] = [cementDepth(plug.from, datum), plug.to];
			if (bottom.value <= top.value)
				fault(desk, "well/seal-evidence", placeOf(bottom, ["end_of_life", "plugs", i, "to"]), {
					what: message("well/seal-evidence.ends-above-its-top"),
					expected: message("well/seal-evidence.below", { top: asWritten(top) }),
					found: asWritten(bottom),
					mend: message("well/seal-evidence.swap-depths"),
				});
			return {
				what: plug.what,
				top,
				bottom,
				...maybe("on", plug.on),
				...maybe("excess", plug.excess),
				...maybe("tagged", plug.tagged),
				...maybe("rule", plug.rule),
			};
		}),
		...maybe("yield", written.slurry?.yield),
		...maybe("density", written.slurry?.density),
		...maybe("cutBelowGround", written.cut_below_ground),
		...maybe("restoration", written.restoration),
		...maybe("paidBy", written.paid_by),
		...maybe("bond", written.bond),
		afterCare: (written.after_care ?? []).map((each) => ({
			what: each.what,
			first: each.first,
			...maybe("everyMonths", each.every_months),
			...maybe("times", each.times),
			...maybe("by", each.by),
		})),
	};
