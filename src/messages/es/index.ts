import type { EnglishEntries } from "../en/index.ts";
import type { Translation } from "../entries.ts";
import { CALC } from "./calc.ts";
import { CALC_CEMENT } from "./calc-cement.ts";
import { CALC_DRILLING } from "./calc-drilling.ts";
import { CALC_STRINGS } from "./calc-strings.ts";
import { CALC_TREATMENT } from "./calc-treatment.ts";
import { CHECK } from "./check.ts";
import { COMPARE } from "./compare.ts";
import { CSV } from "./csv.ts";
import { DATES } from "./dates.ts";
import { DEFINITION } from "./definition.ts";
import { DIAGNOSTICS } from "./diagnostics.ts";
import { EXPECTED } from "./expected.ts";
import { EXPLAIN } from "./explain.ts";
import { FILE } from "./file.ts";
import { FOREIGN } from "./foreign.ts";
import { LIMITS } from "./limits.ts";
import { LIMITS_FORMS } from "./limits-forms.ts";
import { LIST } from "./list.ts";
import { PAD } from "./pad.ts";
import { QUANTITY } from "./quantity.ts";
import { RULES } from "./rules.ts";
import { RULES_BARRIERS } from "./rules-barriers.ts";
import { RULES_CASING } from "./rules-casing.ts";
import { RULES_CEMENT } from "./rules-cement.ts";
import { RULES_CEMENT_JOB } from "./rules-cement-job.ts";
import { RULES_CONDITIONS } from "./rules-conditions.ts";
import { RULES_DAYS } from "./rules-days.ts";
import { RULES_LIMITS } from "./rules-limits.ts";
import { RULES_NAMES } from "./rules-names.ts";
import { RULES_ON_THE_JOB } from "./rules-on-the-job.ts";
import { RULES_PRESSURE } from "./rules-pressure.ts";
import { RULES_RECORDS } from "./rules-records.ts";
import { RULES_SEAL } from "./rules-seal.ts";
import { RULES_SHOE } from "./rules-shoe.ts";
import { RULES_SITE } from "./rules-site.ts";
import { RULES_TREATMENT } from "./rules-treatment.ts";
import { RULES_VERDICT } from "./rules-verdict.ts";
import { SEED } from "./seed.ts";
import { SLIDES } from "./slides.ts";
import { WELL } from "./well.ts";
import { WELL_ASSUMPTIONS } from "./well-assumptions.ts";
import { WELL_CEMENT } from "./well-cement.ts";
import { WELL_HOLE } from "./well-hole.ts";
import { WELL_PIPE } from "./well-pipe.ts";
import { WELL_SEAL } from "./well-seal.ts";
import { WELL_STAGES } from "./well-stages.ts";
import { WELL_WRITING } from "./well-writing.ts";
import { YAML_LINES } from "./yaml-lines.ts";
import { YAML_VALUES } from "./yaml-values.ts";

/** Every message in Spanish. */
export const SPANISH: Translation<EnglishEntries> = {
	...CALC_CEMENT,
	...CALC_DRILLING,
	...CALC_STRINGS,
	...CALC_TREATMENT,
	...CALC,
	...CHECK,
	...COMPARE,
	...SEED,
	...SLIDES,
	...CSV,
	...DEFINITION,
	...DATES,
	...LIMITS_FORMS,
	...LIMITS,
	...QUANTITY,
	...EXPECTED,
	...EXPLAIN,
	...LIST,
	...DIAGNOSTICS,
	...FILE,
	...PAD,
	...FOREIGN,
	...RULES,
	...RULES_VERDICT,
	...RULES_TREATMENT,
	...RULES_SITE,
	...RULES_SEAL,
	...RULES_SHOE,
	...RULES_RECORDS,
	...RULES_ON_THE_JOB,
	...RULES_PRESSURE,
	...RULES_NAMES,
	...RULES_LIMITS,
	...RULES_CONDITIONS,
	...RULES_DAYS,
	...RULES_CEMENT_JOB,
	...RULES_CEMENT,
	...RULES_BARRIERS,
	...RULES_CASING,
	...WELL_ASSUMPTIONS,
	...WELL_CEMENT,
	...WELL_HOLE,
	...WELL_PIPE,
	...WELL_SEAL,
	...WELL_STAGES,
	...WELL_WRITING,
	...WELL,
	...YAML_LINES,
	...YAML_VALUES,
};
