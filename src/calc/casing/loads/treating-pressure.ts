import type { Known } from "../../../cite/known.ts";
import type { Stimulation } from "../../../well/well.ts";
import { stepsOf } from "../../stimulation/ramp-steps.ts";
import { slurryDensity } from "../../stimulation/slurry.ts";
import type { StringContext } from "./string-frame.ts";

export interface Treating {
	readonly pressure: Known<"pressure">;
	readonly density: Known<"density">;
}

/** The greatest pressure the pumps may reach, on a column of the heaviest slurry: a screen-out has no friction. */
export const treatingPressure = ({ well, string }: StringContext): Treating | undefined => {
	const { stimulation } = well;
	if (stimulation === undefined || stimulation.treatedThrough !== string.id) return undefined;
	const pressure = stimulation.limits?.maximumTreatingPressure ?? stimulation.limits?.reliefValve;
	return pressure && { pressure, density: heaviestSlurry(stimulation) };
};

const heaviestSlurry = (stimulation: Stimulation): Known<"density"> => {
	const base = stimulation.baseFluid.density;
	return stimulation.stages
		.flatMap((stage) => stepsOf(stage, stimulation.proppants))
		.flatMap(({ concentration, proppant }) => {
			const sand = stimulation.proppants.find(({ id }) => id === proppant);
			return concentration === undefined || sand === undefined
				? []
				: [slurryDensity.of({ ρ_f: base, c: concentration, SG: sand.specificGravity })];
		})
		.reduce<Known<"density">>(
			(heaviest, slurry) => (slurry.value > heaviest.value ? slurry : heaviest),
			base,
		);
};
