import type { Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import type { DesignBasisDefinition } from "../definition/definition.ts";
import { type Fact, message } from "../messages/message.ts";
import { quantity } from "../units/quantity.ts";
import { assume, type Desk } from "./desk.ts";
import { measured } from "./said.ts";
import type { DesignBasis, DesignFactors, FrictionRange } from "./well.ts";

/** Gradient of fresh water [psi/ft]. */
const FRESH_WATER = 0.433;
/** Pull above the weight of the string [lbf]. */
const OVERPULL = 100_000;
/** Fastest that pipe moves while it is run [ft/s]. */
const RUNNING_SPEED = 5;

/** Share of the yield strength that steel loses for each degree above room temperature [1/°F], and that temperature [°F]. */
const DERATING = 0.0003;
const ROOM = 70;

/** Factors that stand in where none is given. */
const FACTORS = {
	burst: {
		value: 1.1,
		source: cite("devereux", "Table 1-2"),
		what: "well/design-factor.burst",
		why: "well/design-factor.usual",
	},
	collapse: {
		value: 1.125,
		source: cite("tamu-slides", "casing design"),
		what: "well/design-factor.collapse",
		why: "well/design-factor.upper-collapse",
	},
	tension: {
		value: 1.75,
		source: cite("devereux", "Table 1-5"),
		what: "well/design-factor.tension",
		why: "well/design-factor.usual-deviated",
	},
	bending: {
		value: 1.5,
		source: cite("devereux", "Table 1-5"),
		what: "well/design-factor.bending",
		why: "well/design-factor.usual-bending",
	},
	overpull: {
		value: 1.1,
		source: cite("devereux", "p. 62"),
		what: "well/design-factor.overpull",
		why: "well/design-factor.usual-overpull",
	},
	triaxial: {
		value: 1.25,
		source: cite("devereux", "Table 1-5"),
		what: "well/design-factor.triaxial",
		why: "well/design-factor.upper-triaxial",
	},
} as const;

/** What pipe is designed against, once for the well; what is absent is filled in and recorded. */
export const resolveDesignBasis = (written: DesignBasisDefinition | undefined, desk: Desk): DesignBasis => ({
	burstBackup:
		written?.burst_backup ??
		assume(desk, {
			id: "burst-backup",
			at: ["design_basis", "burst_backup"],
			what: message("well/design-basis.what", {
				freshWater: measured("pressure-gradient", FRESH_WATER),
			}),
			why: message("well/design-basis.why"),
			dimension: "pressure-gradient",
			value: FRESH_WATER,
			source: cite("hydrostatics"),
		}),
	designFactors: designFactorsOf(written?.design_factors, desk),
	wear:
		written?.wear ??
		assume(desk, {
			id: "wear",
			at: ["design_basis", "wear"],
			what: message("well/design-basis.pipe-keeps-its-whole-wall"),
			why: message("well/design-basis.no-wear-is-given-drilling"),
			dimension: "share",
			value: 0,
			source: cite("common-practice"),
		}),
	temperatureDerating:
		written?.temperature_derating ??
		assume(desk, {
			id: "temperature-derating",
			at: ["design_basis", "temperature_derating"],
			what: message("well/design-basis.steel-loses-yield-strength-at", {
				derating: measured("share-per-temperature", DERATING),
				room: measured("temperature", ROOM),
			}),
			why: message("well/design-basis.no-rate-is-given-this"),
			dimension: "share-per-temperature",
			value: DERATING,
			source: cite("common-practice"),
		}),
	overpull:
		written?.overpull ??
		assume(desk, {
			id: "overpull",
			at: ["design_basis", "overpull"],
			what: message("well/design-basis.pipe-must-stand-pull-above", {
				overpull: measured("force", OVERPULL),
			}),
			why: message("well/design-basis.no-overpull-is-given-this"),
			dimension: "force",
			value: OVERPULL,
			source: cite("devereux", "p. 62"),
		}),
	friction: {
		cased: written?.friction?.cased ?? frictionOf(desk, "cased"),
		openHole: written?.friction?.open_hole ?? frictionOf(desk, "open_hole"),
	},
	runningSpeed:
		written?.running_speed ??
		assume(desk, {
			id: "running-speed",
			at: ["design_basis", "running_speed"],
			what: message("well/design-basis.pipe-moves-at-at-most", {
				runningSpeed: measured("fluid-velocity", RUNNING_SPEED),
			}),
			why: message("well/design-basis.no-speed-is-given-joint", {
				value: measured("length", 40),
				value2: measured("fluid-velocity", 3.3),
			}),
			dimension: "fluid-velocity",
			value: RUNNING_SPEED,
			source: cite("common-practice"),
		}),
	sourThreshold: desk.catalog.sourService.threshold,
});

const FRICTION = {
	cased: { range: [0.2, 0.3], what: "well/friction.inside-casing" },
	open_hole: { range: [0.25, 0.4], what: "well/friction.in-open-hole" },
} as const;

const coefficient = (value: number): Fact => ({ factor: { dimension: "ratio", value } });

/** One assumption for both ends of a range. */
const frictionOf = (desk: Desk, which: keyof typeof FRICTION): FrictionRange => {
	const { range, what } = FRICTION[which];
	const [least, greatest] = range;
	const id = `friction.${which}`;
	desk.assumptions.push({
		id,
		at: ["design_basis", "friction", which],
		what: message(what, { least: coefficient(least), greatest: coefficient(greatest) }),
		why: message("well/friction.why"),
		source: cite("common-practice"),
	});
	const end = (value: number): Known<"ratio"> => ({
		dimension: "ratio",
		value: quantity("ratio", value),
		from: { kind: "assumed", id, source: cite("common-practice") },
	});
	return [end(least), end(greatest)];
};

const designFactorsOf = (written: DesignBasisDefinition["design_factors"], desk: Desk): DesignFactors => {
	const factor = (name: keyof typeof FACTORS): Known<"ratio"> =>
		written?.[name] ??
		assume(desk, {
			id: `design-factor.${name}`,
			at: ["design_basis", "design_factors", name],
			what: message(FACTORS[name].what, {
				factor: { factor: { dimension: "ratio", value: FACTORS[name].value } },
			}),
			why: message(FACTORS[name].why),
			dimension: "ratio",
			value: FACTORS[name].value,
			source: FACTORS[name].source,
		});
	return {
		burst: factor("burst"),
		collapse: factor("collapse"),
		tension: factor("tension"),
		bending: factor("bending"),
		overpull: factor("overpull"),
		triaxial: factor("triaxial"),
	};
};

/** A string's own factors before the well's. */
export const stringDesignFactors = (
	written: DesignBasisDefinition["design_factors"],
	basis: DesignBasis,
): DesignFactors => ({ ...basis.designFactors, ...written });
