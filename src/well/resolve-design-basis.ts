import type { Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import type { DesignBasisDefinition } from "../definition/definition.ts";
import { quantity } from "../units/quantity.ts";
import { assume, type Desk } from "./desk.ts";
import type { DesignBasis, DesignFactors, FrictionRange } from "./well.ts";

const FACTORS = {
	burst: {
		value: 1.1,
		source: cite("devereux", "Table 1-2"),
		why: "the usual value; regulators and operators set their own",
	},
	collapse: {
		value: 1.125,
		source: cite("tamu-slides", "casing design"),
		why: "the upper end of the usual range of 1.0 to 1.125",
	},
	tension: {
		value: 1.75,
		source: cite("devereux", "Table 1-5"),
		why: "the usual value for a deviated well, without bending",
	},
	bending: {
		value: 1.5,
		source: cite("devereux", "Table 1-5"),
		why: "the usual value where bending is counted in",
	},
	overpull: {
		value: 1.1,
		source: cite("devereux", "p. 62"),
		why: "the usual value for a string pulled once",
	},
	triaxial: {
		value: 1.25,
		source: cite("devereux", "Table 1-5"),
		why: "the upper end of the usual range of 1.2 to 1.25",
	},
} as const;

const WORDS: Readonly<Record<keyof typeof FACTORS, string>> = {
	burst: "in burst",
	collapse: "in collapse",
	tension: "in tension",
	bending: "in tension with bending counted in",
	overpull: "of a string stuck and pulled",
	triaxial: "in triaxial loading",
};

/** What pipe is designed against, once for the well; what is absent is filled in and recorded. */
export const resolveDesignBasis = (written: DesignBasisDefinition | undefined, desk: Desk): DesignBasis => ({
	burstBackup:
		written?.burst_backup ??
		assume(desk, {
			id: "burst-backup",
			at: ["design_basis", "burst_backup"],
			what: "In burst, fresh water stands outside the pipe (0.433 psi/ft).",
			why: "No gradient is given; fresh water is the lightest fluid that can be counted on outside, so it helps least.",
			dimension: "pressure-gradient",
			value: 0.433,
			source: cite("hydrostatics"),
		}),
	designFactors: designFactorsOf(written?.design_factors, desk),
	wear:
		written?.wear ??
		assume(desk, {
			id: "wear",
			at: ["design_basis", "wear"],
			what: "Pipe keeps its whole wall: no wear.",
			why: "No wear is given. Drilling through a string thins it; where that is expected it must be stated.",
			dimension: "share",
			value: 0,
			source: cite("common-practice"),
		}),
	temperatureDerating:
		written?.temperature_derating ??
		assume(desk, {
			id: "temperature-derating",
			at: ["design_basis", "temperature_derating"],
			what: "Steel loses 0.03 % of its yield strength for each °F above 70 °F.",
			why: "No rate is given; this is the usual one for carbon steel.",
			dimension: "share-per-temperature",
			value: 0.0003,
			source: cite("common-practice"),
		}),
	overpull:
		written?.overpull ??
		assume(desk, {
			id: "overpull",
			at: ["design_basis", "overpull"],
			what: "Pipe must stand 100000 lbf of pull above its weight.",
			why: "No overpull is given; this is the usual least value.",
			dimension: "force",
			value: 100_000,
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
			what: "Pipe moves at 5 ft/s at most while it is run.",
			why: "No speed is given; a 40 ft joint let down in a dozen seconds moves at 3.3 ft/s on average, and half as fast again at its fastest.",
			dimension: "fluid-velocity",
			value: 5,
			source: cite("common-practice"),
		}),
	sourThreshold: desk.catalog.sourService.threshold,
});

const FRICTION = {
	cased: { range: [0.2, 0.3], where: "inside casing" },
	open_hole: { range: [0.25, 0.4], where: "in open hole" },
} as const;

/** One assumption for both ends of a range. */
const frictionOf = (desk: Desk, which: keyof typeof FRICTION): FrictionRange => {
	const { range, where } = FRICTION[which];
	const [least, greatest] = range;
	const id = `friction.${which}`;
	desk.assumptions.push({
		id,
		at: ["design_basis", "friction", which],
		what: `The friction coefficient of pipe ${where} is ${least} to ${greatest}.`,
		why: "No range is given; this is the usual one. Back it out of the hook loads of wells nearby.",
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
			what: `The design factor ${WORDS[name]} is ${FACTORS[name].value}.`,
			why: `None is given; this is ${FACTORS[name].why}.`,
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
