import type { Known } from "../../../cite/known.ts";
import { message } from "../../../messages/message.ts";
import type { Formation, Well } from "../../../well/well.ts";
import { type Gaps, siblingOf } from "../../gaps.ts";
import { tvdAt } from "../../trajectory/at-depth.ts";
import type { StringContext } from "./string-frame.ts";

const baseOf = ({ formations }: Well["geology"], i: number) => formations[i]?.base ?? formations[i + 1]?.top;

/** Beds stated to creep that the string stands in, with their bases. */
export const saltOn = (
	{ well, path, string }: StringContext,
	bottom: Known<"true-vertical-depth">,
): readonly (Pick<Formation, "top"> & { readonly base: Known<"true-vertical-depth"> | undefined })[] => {
	const top = tvdAt(path, string.top);
	return well.geology.formations.flatMap((formation, i) => {
		const base = baseOf(well.geology, i);
		const reached = formation.top.value < bottom.value && (base === undefined || base.value > top.value);
		return formation.mobile === true && reached ? [{ top: formation.top, base }] : [];
	});
};

/** Salt of which it is not said whether it creeps. */
export const askOfSalt = ({ geology }: Well, gaps: Gaps): void => {
	for (const formation of geology.formations)
		if (formation.lithology === "salt" && formation.mobile === undefined)
			gaps.missing(
				`casing.mobile_salt.${formation.id}`,
				message("calc/it-is-not-stated-whether-salt", { formation: formation.name }),
				[siblingOf(formation.top, "mobile", ["geology", "formations"])],
			);
};
