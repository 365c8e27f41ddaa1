import type { PaperContext } from "../context.ts";
import { sayDate, sayText } from "./say.ts";

/** Words about whom to call, who decides, and by when. */
export const peopleWords = (context: PaperContext): Record<string, unknown> => {
	const { agency, safety } = context.well;
	const sour = safety?.hydrogen_sulfide;
	return {
		emergency_number: sayText(safety?.emergency?.number),
		agency_name: sayText(agency?.name),
		agency_phone: sayText(agency?.phone),
		agency_case: sayText(agency?.case),
		comments_until: sayDate(context, agency?.comments_until),
		sour_gas_stated: sour !== undefined,
		sour_gas_expected: sour?.expected === true,
		sour_gas_not_expected: sour?.expected === false,
	};
};
