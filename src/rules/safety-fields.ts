import type { FieldName } from "../catalog/limits/vocabulary.ts";
import { message, type Said } from "../messages/message.ts";
import type { Well } from "../well/well.ts";
import type { Field } from "./fields.ts";

type Safety = Well["safety"];

const has = (value: unknown): boolean =>
	value !== undefined && value !== "" && value !== false && !(Array.isArray(value) && value.length === 0);

const field = (at: readonly string[], find: (safety: Safety) => unknown): Field => ({
	at: ["safety", ...at],
	given: ({ safety }) => has(find(safety)),
});

/** What a crew has to know before the first job, as fields that a rule may ask for. */
export const SAFETY_FIELDS = {
	"emergency number": field(["emergency", "number"], (s) => s?.emergency?.number),
	"site address": field(["emergency", "site_address"], (s) => s?.emergency?.site_address),
	hospital: field(["emergency", "hospital"], (s) => s?.emergency?.hospital),
	"person in charge": field(["person_in_charge"], (s) => s?.person_in_charge),
	"crew's contacts": field(["contacts"], (s) => s?.contacts),
	"two muster points": field(["muster_points"], (s) => (s?.muster_points?.length ?? 0) > 1),
	"exclusion distance": field(["exclusion"], (s) => s?.exclusion),
	"ignition distance": field(["ignition"], (s) => s?.ignition),
	"radio silence distance": field(["radio_silence"], (s) => s?.radio_silence),
	"gas alarms": field(["gas_alarms"], (s) => s?.gas_alarms),
	"silica controls": field(["silica"], (s) => s?.silica),
	eyewash: field(["eyewash"], (s) => s?.eyewash),
	"wind limit": field(["wind_limit"], (s) => s?.wind_limit),
	"lightning distance": field(["lightning"], (s) => s?.lightning),
	"plan for a screen-out": {
		at: ["stimulation", "if_it_screens_out"],
		given: ({ stimulation }) => has(stimulation?.ifItScreensOut),
	},
	"place of returned water": {
		at: ["stimulation", "flowback", "goes_to"],
		given: ({ stimulation }) => has(stimulation?.flowback?.goesTo),
	},
} as const satisfies Partial<Record<FieldName, Field>>;

export const SAFETY_FIELD_WORDS = {
	"emergency number": message("rules/field.emergency-number"),
	"site address": message("rules/field.site-address"),
	hospital: message("rules/field.hospital"),
	"person in charge": message("rules/field.person-in-charge"),
	"crew's contacts": message("rules/field.crews-contacts"),
	"two muster points": message("rules/field.two-muster-points"),
	"exclusion distance": message("rules/field.exclusion-distance"),
	"ignition distance": message("rules/field.ignition-distance"),
	"radio silence distance": message("rules/field.radio-silence-distance"),
	"gas alarms": message("rules/field.gas-alarms"),
	"silica controls": message("rules/field.silica-controls"),
	eyewash: message("rules/field.eyewash"),
	"wind limit": message("rules/field.wind-limit"),
	"lightning distance": message("rules/field.lightning-distance"),
	"plan for a screen-out": message("rules/field.plan-for-a-screen-out"),
	"place of returned water": message("rules/field.place-of-returned-water"),
} as const satisfies Partial<Record<FieldName, Said>>;
