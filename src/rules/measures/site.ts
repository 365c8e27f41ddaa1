import { message } from "../../messages/message.ts";
import { missingAt } from "../case.ts";
import { distanceTo, placeWords } from "../distances.ts";
import { absent, belowOrAbove, known, lacking, type Measure } from "./reading.ts";

export const siteMeasures = {
	"well depth below ground": {
		noun: message("rules/vertical-depth-well-below-ground"),
		read: ({ results }) =>
			known(
				results.trajectory.total_depth.below_ground,
				missingAt(message("rules/total-depth"), "trajectory"),
			),
		say: ({ part }) => [message("rules/well-is-deep-below-ground-vertically", { part })],
	},
	"protected water to perforations": {
		noun: message("rules/vertical-distance-from-protected-water-to"),
		read: ({ results, well }) => {
			if (well.stimulation === undefined) return absent(message("rules/no-interval-is-to-be-treated"));
			const missing =
				results.geology.protected_water_base === undefined
					? missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base")
					: missingAt(message("rules/uppermost-perforation"), "stimulation", "stages");
			return known(results.isolation.protected_water_to_top_perforation, missing);
		},
		say: (said) => [
			...belowOrAbove(
				message("rules/the-uppermost-perforation"),
				message("rules/base-of-protected-water"),
				said,
			),
			message("rules/vertically"),
		],
		side: "below",
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
				found.surveyedBy === undefined
					? [message("rules/computed-from-coordinates")]
					: [message("rules/by", { surveyedBy: found.surveyedBy })],
			);
		},
		say: ({ part }, { subject }, { from = "wellhead" }) => [
			message("rules/is-from-place", {
				name: subject.kind === "neighbor" ? subject.neighbor.name : "",
				part,
				place: placeWords(from),
			}),
		],
	},
	"hydrogen sulfide": {
		noun: message("rules/hydrogen-sulfide-in-gas"),
		read: ({ well }) => {
			const stated = well.safety?.hydrogen_sulfide;
			const missing = missingAt(
				message("rules/fraction-hydrogen-sulfide"),
				"safety",
				"hydrogen_sulfide",
				"fraction",
			);
			if (stated?.fraction !== undefined) return known(stated.fraction, missing);
			return lacking(missing);
		},
		say: ({ part }, { well }) => [
			message("rules/gas-is-stated-to-carry-hydrogen-sulfide", {
				part,
				detail: {
					parts:
						well.safety?.hydrogen_sulfide?.stated_by === undefined
							? []
							: [message("rules/stated-by", { by: well.safety.hydrogen_sulfide.stated_by })],
				},
			}),
		],
	},
	"volume of the treatment": {
		noun: message("rules/volume-treatment"),
		read: ({ well, results }) =>
			well.stimulation === undefined
				? absent(message("rules/no-stimulation-is-planned-2"))
				: known(
						results.stimulation?.clean_volume,
						missingAt(message("rules/volumes-stages"), "stimulation", "stages"),
					),
		say: ({ part }) => [message("rules/treatment-takes-clean-fluid-in-all", { part })],
	},
	"volume of the greatest stage": {
		noun: message("rules/volume-greatest-stage"),
		read: ({ well, results }) => {
			if (well.stimulation === undefined) return absent(message("rules/no-stimulation-is-planned-2"));
			const volumes = (results.stimulation?.stages ?? []).map(({ clean_volume }) => clean_volume);
			const [first, ...rest] = volumes;
			return known(
				first && rest.reduce((most, each) => (each.value > most.value ? each : most), first),
				missingAt(message("rules/volumes-stages"), "stimulation", "stages"),
			);
		},
		say: ({ part }) => [message("rules/greatest-stage-takes-clean-fluid", { part })],
	},
	/** Judged zone by zone by its own check; as a single number it has no meaning. */
	"dissolved solids": {
		noun: message("rules/dissolved-solids"),
		read: () => absent(message("rules/dissolved-solids-are-judged-zone-by-zone")),
		say: ({ part }) => [message("rules/water-carries", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
