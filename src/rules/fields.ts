import type { FieldName } from "../catalog/limits/vocabulary.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import type { Well } from "../well/well.ts";
import { SAFETY_FIELD_WORDS, SAFETY_FIELDS } from "./safety-fields.ts";
import { rolesOf } from "./subject.ts";

/** Where a field is written, and whether it is there. `undefined`: the well has no part that could carry it. */
export interface Field {
	readonly at: Path;
	readonly given: (well: Well) => boolean | undefined;
}

const has = (value: unknown): boolean =>
	value !== undefined && value !== "" && !(Array.isArray(value) && value.length === 0);

/** True where every item says it; nothing to say it of is a false. */
const each = <T>(items: readonly T[], find: (item: T) => unknown): boolean =>
	items.length > 0 && items.every((item) => has(find(item)));

/** Assumed values are no statement: a filing that asks for the value has to be given it. */
const stated = (well: Well, ...path: readonly string[]): boolean =>
	!well.assumptions.some(({ at }) => path.every((step) => at.includes(step)));

const cemented = (well: Well) => well.strings.flatMap(({ cement }) => (cement === undefined ? [] : [cement]));
const slurries = (well: Well) => cemented(well).flatMap((job) => job.slurries);
const below = (well: Well) => well.strings.filter((string) => !rolesOf(string, well).includes("conductor"));
const field = (at: Path, find: (well: Well) => unknown): Field => ({ at, given: (well) => has(find(well)) });
const ofJob = (at: Path, find: (job: NonNullable<Well["stimulation"]>) => boolean): Field => ({
	at: ["stimulation", ...at],
	given: ({ stimulation }) => stimulation && find(stimulation),
});

/** Every field that a filing may be asked for. */
export const FIELD_CODE: Readonly<Record<FieldName, Field>> = {
	"API number": field(["well", "api_number"], ({ identity }) => identity.api_number),
	"permit number": field(["well", "permit"], ({ identity }) => identity.permit),
	operator: field(["well", "operator"], ({ identity }) => identity.operator),
	lease: field(["well", "lease"], ({ identity }) => identity.lease),
	field: field(["well", "field"], ({ identity }) => identity.field),
	county: field(["site", "county"], ({ site }) => site.county),
	"technical contact": field(
		["well", "technical_contact"],
		({ identity }) => identity.technical_contact?.phone ?? identity.prepared_by?.phone,
	),
	"surface location": field(["site", "surface_location"], ({ site }) => site.surface_location),
	"coordinate datum": field(
		["site", "surface_location", "datum"],
		({ site }) => site.surface_location?.datum,
	),
	"ground elevation": field(["site", "ground_elevation"], ({ site }) => site.ground_elevation),
	"depth datum": field(["site", "depth_datum"], ({ site }) => site.depth_datum),
	"directional plan": field(["trajectory", "plan"], ({ trajectory }) => trajectory.plan),
	"directional survey": field(["trajectory", "actual", "survey"], ({ trajectory }) => trajectory.survey),
	"survey company": field(
		["trajectory", "actual", "company"],
		({ trajectory }) => trajectory.survey?.company,
	),
	"survey dates": field(["trajectory", "actual", "dates"], ({ trajectory }) => trajectory.survey?.dates),
	"formation tops": field(["geology", "formations"], ({ geology }) => geology.formations),
	"water zones": field(["geology", "water"], ({ geology }) => geology.water),
	"protected-water base": field(
		["geology", "protected_water", "base"],
		({ geology }) => geology.protectedWater,
	),
	"protected-water letter": field(
		["geology", "protected_water", "reference"],
		({ geology }) => geology.protectedWater?.reference,
	),
	"confining zone": {
		at: ["geology", "formations"],
		given: ({ geology }) => geology.formations.some(({ confining }) => confining),
	},
	"pore pressures": {
		at: ["geology", "formations"],
		given: ({ geology }) => each(geology.formations, ({ porePressure }) => porePressure),
	},
	"fracture gradients": {
		at: ["geology", "formations"],
		given: ({ geology }) => each(geology.formations, ({ fractureGradient }) => fractureGradient),
	},
	"temperature gradient": field(
		["geology", "temperature", "gradient"],
		({ geology }) => geology.temperatureGradient,
	),
	"hole sizes": field(["holes"], ({ holes }) => holes),
	"drilling fluids": { at: ["holes"], given: ({ holes }) => each(holes, ({ fluid }) => fluid) },
	"pipe condition": { at: ["casing"], given: (well) => stated(well, "casing", "condition") },
	"design factors": {
		at: ["design_basis", "design_factors"],
		given: (well) =>
			["burst", "collapse", "tension"].every((factor) =>
				stated(well, "design_basis", "design_factors", factor),
			),
	},
	"cement slurries": { at: ["casing"], given: (well) => slurries(well).length > 0 },
	"cement class": { at: ["casing"], given: (well) => each(slurries(well), ({ cementClass }) => cementClass) },
	"cement strengths": { at: ["casing"], given: (well) => each(slurries(well), ({ strength }) => strength) },
	"cement top method": {
		at: ["casing"],
		given: (well) => cemented(well).length > 0 && stated(well, "casing", "top_method"),
	},
	centralizers: { at: ["casing"], given: (well) => each(below(well), ({ centralizers }) => centralizers) },
	"float equipment": { at: ["casing"], given: (well) => each(below(well), ({ floats }) => floats) },
	preventers: field(["well_control", "preventers"], ({ wellControl }) => wellControl?.preventers),
	"casing pressure tests": {
		at: ["casing"],
		given: (well) => each(below(well), ({ pressureTest }) => pressureTest),
	},
	"stage table": ofJob(["stages"], ({ stages }) => stages.length > 0),
	"base fluid": ofJob(["base_fluid"], ({ baseFluid }) => has(baseFluid)),
	proppants: ofJob(["proppants"], ({ proppants }) => proppants.length > 0),
	"treating rates": ofJob(["stages"], ({ stages }) =>
		each(stages, ({ rate, steps }) => rate ?? steps[0]?.rate),
	),
	"maximum treating pressure": ofJob(["limits", "maximum_treating_pressure"], ({ limits }) =>
		has(limits?.maximumTreatingPressure),
	),
	"water sources": ofJob(["water_sources"], ({ waterSources }) => waterSources.length > 0),
	"recycled water share": ofJob(["water_sources"], ({ waterSources }) =>
		each(waterSources, ({ share }) => share),
	),
	"additive purposes": ofJob(["additives"], ({ additives }) => each(additives, ({ purpose }) => purpose)),
	"additive suppliers": ofJob(["additives"], ({ additives }) => each(additives, ({ supplier }) => supplier)),
	"ingredient CAS numbers": ofJob(["additives"], ({ additives }) =>
		each(
			additives,
			({ ingredients }) => each(ingredients, ({ cas, tradeSecret }) => cas ?? tradeSecret) || undefined,
		),
	),
	"ingredient shares": ofJob(["additives"], ({ additives }) =>
		each(additives, ({ ingredients }) => each(ingredients, ({ maxShare }) => maxShare) || undefined),
	),
	"flowback plan": ofJob(["flowback"], ({ flowback }) => has(flowback?.goesTo)),
	"hydrogen sulfide statement": field(
		["safety", "hydrogen_sulfide"],
		({ safety }) => safety?.hydrogen_sulfide,
	),
	"offset wells": {
		at: ["site", "offset_wells"],
		given: ({ offsetWells, site }) => offsetWells.length > 0 || site.neighbors_complete === true,
	},
	"water wells": {
		at: ["site", "neighbors"],
		given: ({ neighbors, site }) =>
			neighbors.some(({ kind }) => kind === "water well") || site.neighbors_complete === true,
	},
	"start date": field(["schedule"], ({ schedule, identity }) => identity.spud ?? schedule?.[0]?.starts),
	"production string apart from surface casing": {
		at: ["casing"],
		given: (well) => well.strings.some((string) => rolesOf(string, well).includes("production")),
	},
	"predicted annulus rise": ofJob(["annuli"], ({ annuli }) =>
		each(annuli, ({ predictedRise }) => predictedRise),
	),
	"annulus stop pressure": ofJob(["annuli"], ({ annuli }) => each(annuli, ({ stopAbove }) => stopAbove)),
	"search for neighbors": field(["site", "neighbors_complete"], ({ site }) => site.neighbors_complete),
	"way to open the toe": ofJob(["toe"], ({ method, toe }) => method !== "plug and perforate" || has(toe)),
	...SAFETY_FIELDS,
};

/** What each field is called, without an article. */
export const FIELD_WORDS: Readonly<Record<FieldName, Said>> = {
	"API number": message("rules/field.api-number"),
	"permit number": message("rules/field.permit-number"),
	operator: message("rules/field.operator"),
	lease: message("rules/field.lease"),
	field: message("rules/field.field"),
	county: message("rules/field.county"),
	"technical contact": message("rules/field.technical-contact"),
	"surface location": message("rules/field.surface-location"),
	"coordinate datum": message("rules/field.coordinate-datum"),
	"ground elevation": message("rules/field.ground-elevation"),
	"depth datum": message("rules/field.depth-datum"),
	"directional plan": message("rules/field.directional-plan"),
	"directional survey": message("rules/field.directional-survey"),
	"survey company": message("rules/field.survey-company"),
	"survey dates": message("rules/field.survey-dates"),
	"formation tops": message("rules/field.formation-tops"),
	"water zones": message("rules/field.water-zones"),
	"protected-water base": message("rules/field.protected-water-base"),
	"protected-water letter": message("rules/field.protected-water-letter"),
	"confining zone": message("rules/field.confining-zone"),
	"pore pressures": message("rules/field.pore-pressures"),
	"fracture gradients": message("rules/field.fracture-gradients"),
	"temperature gradient": message("rules/field.temperature-gradient"),
	"hole sizes": message("rules/field.hole-sizes"),
	"drilling fluids": message("rules/field.drilling-fluids"),
	"pipe condition": message("rules/field.pipe-condition"),
	"design factors": message("rules/field.design-factors"),
	"cement slurries": message("rules/field.cement-slurries"),
	"cement class": message("rules/field.cement-class"),
	"cement strengths": message("rules/field.cement-strengths"),
	"cement top method": message("rules/field.cement-top-method"),
	centralizers: message("rules/field.centralizers"),
	"float equipment": message("rules/field.float-equipment"),
	preventers: message("rules/field.preventers"),
	"casing pressure tests": message("rules/field.casing-pressure-tests"),
	"stage table": message("rules/field.stage-table"),
	"base fluid": message("rules/field.base-fluid"),
	proppants: message("rules/field.proppants"),
	"treating rates": message("rules/field.treating-rates"),
	"maximum treating pressure": message("rules/field.maximum-treating-pressure"),
	"water sources": message("rules/field.water-sources"),
	"recycled water share": message("rules/field.recycled-water-share"),
	"additive purposes": message("rules/field.additive-purposes"),
	"additive suppliers": message("rules/field.additive-suppliers"),
	"ingredient CAS numbers": message("rules/field.ingredient-cas-numbers"),
	"ingredient shares": message("rules/field.ingredient-shares"),
	"flowback plan": message("rules/field.flowback-plan"),
	"hydrogen sulfide statement": message("rules/field.hydrogen-sulfide-statement"),
	"offset wells": message("rules/field.offset-wells"),
	"water wells": message("rules/field.water-wells"),
	"start date": message("rules/field.start-date"),
	"production string apart from surface casing": message(
		"rules/field.production-string-apart-from-surface-casing",
	),
	"predicted annulus rise": message("rules/field.predicted-annulus-rise"),
	"annulus stop pressure": message("rules/field.annulus-stop-pressure"),
	"search for neighbors": message("rules/field.search-for-neighbors"),
	"way to open the toe": message("rules/field.way-to-open-toe"),
	...SAFETY_FIELD_WORDS,
};
