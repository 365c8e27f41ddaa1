import { missingAt } from "../case.ts";
import { distanceTo } from "../distances.ts";
import { absent, known, lacking, type Measure } from "./reading.ts";

export const siteMeasures = {
	"well depth below ground": {
		noun: "vertical depth of the well below ground",
		read: ({ results }) =>
			known(results.trajectory.total_depth.below_ground, missingAt("total depth", "trajectory")),
		say: ({ part }) => ["the well is ", part, " deep below ground, vertically"],
	},
	"protected water to perforations": {
		noun: "vertical distance from protected water to the uppermost perforation",
		read: ({ results, well }) => {
			if (well.stimulation === undefined) return absent("no interval is to be treated");
			const missing =
				results.geology.protected_water_base === undefined
					? missingAt("base of protected water", "geology", "protected_water", "base")
					: missingAt("uppermost perforation", "stimulation", "stages");
			return known(results.isolation.protected_water_to_top_perforation, missing);
		},
		say: ({ size, value }) => [
			"the uppermost perforation is ",
			size,
			value.value < 0 ? " above " : " below ",
			"the base of protected water, vertically",
		],
	},
	distance: {
		noun: "distance",
		read: (the, { from = "wellhead" }) => {
			if (the.subject.kind !== "neighbor") return lacking();
			const found = distanceTo(the, the.subject.neighbor, from);
			if ("missing" in found) return lacking(found.missing);
			return known(
				found.value,
				missingAt("distance", "site", "neighbors"),
				found.surveyedBy === undefined ? [", computed from coordinates"] : [`, by ${found.surveyedBy}`],
			);
		},
		say: ({ part }, { subject }, { from = "wellhead" }) => [
			subject.kind === "neighbor" ? `${subject.neighbor.name} is ` : "it is ",
			part,
			` from the ${from}`,
		],
	},
	"hydrogen sulfide": {
		noun: "hydrogen sulfide in the gas",
		read: ({ well }) => {
			const stated = well.safety?.hydrogen_sulfide;
			const missing = missingAt("fraction of hydrogen sulfide", "safety", "hydrogen_sulfide", "fraction");
			if (stated?.fraction !== undefined) return known(stated.fraction, missing);
			return lacking(missing);
		},
		say: ({ part }, { well }) => [
			"the gas is stated to carry ",
			part,
			" of hydrogen sulfide",
			...(well.safety?.hydrogen_sulfide?.stated_by === undefined
				? []
				: [` (stated by ${well.safety.hydrogen_sulfide.stated_by})`]),
		],
	},
	"volume of the treatment": {
		noun: "volume of the treatment",
		read: ({ well, results }) =>
			well.stimulation === undefined
				? absent("no stimulation is planned")
				: known(
						results.stimulation?.clean_volume,
						missingAt("volumes of the stages", "stimulation", "stages"),
					),
		say: ({ part }) => ["the treatment takes ", part, " of clean fluid in all"],
	},
	"volume of the greatest stage": {
		noun: "volume of the greatest stage",
		read: ({ well, results }) => {
			if (well.stimulation === undefined) return absent("no stimulation is planned");
			const volumes = (results.stimulation?.stages ?? []).map(({ clean_volume }) => clean_volume);
			const [first, ...rest] = volumes;
			return known(
				first && rest.reduce((most, each) => (each.value > most.value ? each : most), first),
				missingAt("volumes of the stages", "stimulation", "stages"),
			);
		},
		say: ({ part }) => ["the greatest stage takes ", part, " of clean fluid"],
	},
	/** Judged zone by zone by its own check; as a single number it has no meaning. */
	"dissolved solids": {
		noun: "dissolved solids",
		read: () => absent("dissolved solids are judged zone by zone"),
		say: ({ part }) => ["the water carries ", part],
	},
} as const satisfies Readonly<Record<string, Measure>>;
