import { CEMENT_VALUES } from "./values/cement.ts";
import type { SheetValues } from "./values/line.ts";
import { SITE_VALUES } from "./values/site.ts";
import { STRING_VALUES } from "./values/string.ts";
import { TREATMENT_VALUES } from "./values/treatment.ts";

export type { SheetLine, SheetValue } from "./values/line.ts";

/** Every value that a file of `seeds/jobs/` may name, and that a step may print as `{name}`. */
export const SHEET_VALUES: SheetValues = {
	...SITE_VALUES,
	...STRING_VALUES,
	...CEMENT_VALUES,
	...TREATMENT_VALUES,
};
